import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/catalogue';
import { choice, commonPractice, input, list, named, procedure, type AnyInput } from '../../src/core/define';
import { amountText, signature, sourceText, wordsOf } from '../../src/derive/words';

const wordsFor = (one: AnyInput) =>
  wordsOf(
    procedure({
      name: 'GROUP.FN',
      summary: 'What it gives.',
      inputs: [one],
      gives: 'ratio',
      method: 'None.',
      run: () => 0,
      sources: [commonPractice('none')],
    }),
  ).parameters[0];

describe('the words of an argument', () => {
  it('are its meaning and the units of both systems, limits and the usual range apart', () => {
    const push = input('push', 'F', 'force', { min: '0 N', usual: ['20 N', '50 kN'], says: 'Axial push' });
    expect(wordsFor(push)).toMatchObject({
      says: 'Axial push (lbf or N)',
      limits: 'Must be at least 0. Usually 4.5 to 11000 lbf or 20 to 50000 N.',
      optional: false,
    });
  });

  it('give a default in both systems, and zero without a unit', () => {
    const cut = input('cut', 'c', 'length', { default: '0.002 in', says: 'Least cut' });
    expect(wordsFor(cut)?.says).toBe('Least cut (in or mm). If left out: 0.002 in (0.0508 mm)');
    const shim = input('shim', 's', 'length', { default: '0 mm', says: 'Shims' });
    expect(wordsFor(shim)?.says).toBe('Shims (in or mm). If left out: 0');
  });

  it('list the words it takes, and which is the default', () => {
    const method = choice('method', ['worst', 'rss'], { default: 'worst', says: 'Way to add up' });
    expect(wordsFor(method)?.says).toBe('Way to add up. One of: "worst" (default), "rss"');
  });

  it('say what is named, what a number stands for, and quote a default that is a word', () => {
    const wire = named(
      'wire',
      'G',
      {
        what: 'the name of a wire',
        read: (text) => text,
        number: { kind: 'pressure', says: 'shear modulus', means: String },
      },
      { default: 'music wire', says: 'Wire' },
    );
    expect(wordsFor(wire)?.says).toBe(
      'Wire (the name of a wire; or a number: shear modulus, psi or MPa). If left out: "music wire"',
    );
  });

  it('say what counts where it is left out and has no default', () => {
    const rates = list('rates', 'k', 'ratio', { optional: true, whenLeftOut: '1 each', says: 'Range' });
    expect(wordsFor(rates)?.says).toBe('Range. If left out: 1 each');
  });

  it('call the lowest temperature absolute zero', () => {
    const temp = input('temp', 'T', 'temperature', { above: '0 K', says: 'Temperature' });
    expect(wordsFor(temp)?.limits).toBe('Must be above absolute zero.');
  });
});

describe('an amount', () => {
  it.each([
    ['20 °C', 'temperature', '20 °C (68 °F)'],
    ['0.002 in', 'length', '0.002 in (0.0508 mm)'],
    ['81500 MPa', 'pressure', '81500 MPa (11.82 Mpsi)'],
    ['1 atm', 'pressure', '1 atm (14.7 psi or 0.1013 MPa)'],
    ['118 deg', 'angle', '118 deg'],
    ['0 N', 'force', '0'],
    [0.3, 'ratio', '0.3'],
  ] as const)('%s is said in the units of either reader', (amount, kind, text) => {
    expect(amountText(amount, kind)).toBe(text);
  });
});

it('a signature marks what may be left out and what repeats', () => {
  const parameter = { says: '', optional: false, repeating: false };
  expect(
    signature({
      id: 'GROUP.FN',
      parameters: [
        { ...parameter, name: 'a' },
        { ...parameter, name: 'b', optional: true, repeating: true },
      ],
    }),
  ).toBe('=MOLD.GROUP.FN(a, [b, …])');
});

it('a source says its kind', () => {
  expect(sourceText({ kind: 'published', cites: 'A table' })).toBe('Published: A table');
  expect(sourceText(commonPractice('A rule'))).toBe('Common practice: A rule');
});

describe('every text of an argument', () => {
  const texts = catalogue.flatMap((definition) =>
    wordsOf(definition).parameters.map(({ name, says }) => [`${definition.name} ${name}`, says] as const),
  );

  it('says one unit or meaning once', () => {
    const wrong = texts.filter(([, says]) => /\bin in\b|left out[^.]*left out|\.\.|\. \./i.test(says));
    expect(wrong).toEqual([]);
  });
});

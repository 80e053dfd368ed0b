import katex from 'katex';
import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/catalogue';
import { seatSink } from '../../src/catalogue/seat/sink';
import { fillRunner } from '../../src/catalogue/fill/runner';
import { fillBurn } from '../../src/catalogue/fill/burn';
import { ejectStrain } from '../../src/catalogue/eject/strain';
import { stackBender } from '../../src/catalogue/stack/bender';
import type { Check } from '../../src/core/checks';
import type { Definition } from '../../src/core/define';
import { SYSTEMS, type System } from '../../src/core/quantity';
import { constantsOf, equationsOf, rangeOf, typesetWork, type TypesetLine } from '../../src/derive/typeset';
import { workOf } from '../../src/derive/work';
import { measureTex, unitTex } from '../../src/derive/typesetQuantity';
import { checksOf } from '../support/checks';
import { valuesOf } from '../support/runCheck';

const workOfCheck = (definition: Definition, check: Check, system: System) =>
  typesetWork(definition, valuesOf(definition, check, system), system, () => 'given');

const linesOf = (definition: Definition, system: System = 'mm'): readonly TypesetLine[] =>
  workOfCheck(definition, checksOf(definition)[0] as Check, system).lines;

const line = (lines: readonly TypesetLine[], symbol: string): TypesetLine =>
  lines.find((one) => one.symbol === symbol) as TypesetLine;

/** Throws where KaTeX, at its strictest, does not know what is meant. */
const typesets = (tex: string): void => {
  katex.renderToString(tex, { strict: 'error', throwOnError: true });
};

describe.each(catalogue.map((definition) => [definition.name, definition] as const))(
  'the work of %s',
  (_name, definition) => {
    it('is typeset without a gap for every check, in either system', () => {
      for (const check of checksOf(definition)) {
        for (const system of SYSTEMS) {
          const { lines } = workOfCheck(definition, check, system);
          expect(lines.some(({ role }) => role === 'result')).toBe(true);
          for (const one of lines) {
            expect(`${one.valueText} ${one.tex ?? ''} ${one.numbersTex ?? ''}`).not.toMatch(
              /NaN|undefined|Infinity|null/,
            );
            expect(one.valueText).not.toBe('');
            typesets(one.symbolTex);
            if (one.role === 'input') continue;
            expect(one.tex ?? one.words ?? '').not.toBe('');
            if (one.tex !== undefined) typesets(one.tex);
            if (one.numbersTex !== undefined) typesets(one.numbersTex);
          }
        }
      }
    });

    it('has equations and conditions in symbols that can be typeset', () => {
      for (const { cases, symbolTex } of equationsOf(definition)) {
        typesets(symbolTex);
        for (const { tex, words } of cases) {
          if (tex === undefined) expect(words).not.toBe('');
          else typesets(tex);
        }
      }
      for (const { tex } of rangeOf(definition)) if (tex !== undefined) typesets(tex);
    });
  },
);

describe('numbers put into an equation', () => {
  it('carry their units, and take the branch that the values take', () => {
    const lines = linesOf(seatSink);
    expect(line(lines, 'phi').numbersTex).toBe('\\phi = \\arctan\\left(0.15\\right) = {8.53077^{\\circ}}');
    // Without a stop the sink is that of the seat alone.
    expect(line(lines, 'z').tex).toBe('z = z_{0}');
    expect(line(lines, 'z').numbersTex).toMatch(/^z = \{0\.0516\d*\\,\\mathrm\{mm\}\}$/);
  });

  it('are bracketed where a power or a sign needs it', () => {
    expect(line(linesOf(seatSink), 'C').numbersTex).toContain('\\left(25\\,\\mathrm{mm}\\right)^{2}');
  });

  it('are in the system asked for', () => {
    expect(line(linesOf(seatSink, 'in'), 'z').numbersTex).toContain('\\mathrm{in}');
  });

  it('stand without units in a rule of thumb, which says which ones it means', () => {
    const { numbersTex, note } = line(linesOf(fillRunner), 'd');
    expect(numbersTex).toMatch(
      /^d = \\frac\{\\sqrt\{12\} \\cdot 60\^\{0\.25\}\}\{3\.7\} = \{[\d.]+\\,\\mathrm\{mm\}\}$/,
    );
    expect(note).toBe('Numbers without units: m in g, L in mm, the result in mm.');
  });

  it('count temperatures from absolute zero unless only their difference is taken', () => {
    expect(line(linesOf(fillBurn), 'T_2').numbersTex).toMatch(/\\,\\mathrm\{K\}/);
    expect(line(linesOf(ejectStrain), 'epsilon_T').numbersTex).toContain('{}^{\\circ}\\mathrm{C}');
  });
});

describe('a unit in TeX', () => {
  it('has real exponents and upright letters', () => {
    expect(unitTex('N/mm²')).toBe('\\mathrm{N}/\\mathrm{mm}^{2}');
    expect(unitTex('Pa·s^n')).toBe('\\mathrm{Pa}\\cdot \\mathrm{s}^\\mathrm{n}');
  });

  it('goes without the 1 of a reciprocal, and with a percent sign close to its number', () => {
    expect(measureTex(2, '1/°C')).toBe('2/{}^{\\circ}\\mathrm{C}');
    expect(measureTex(30, '/h')).toBe('30/\\mathrm{h}');
    expect(measureTex(1.5e-7, 'm')).toBe('1.5\\times 10^{-7}\\,\\mathrm{m}');
  });
});

it('names the numbers that a method takes for granted as those of an equation', () => {
  expect(constantsOf(stackBender)).toMatchObject([{ symbol: 'f', is: '1.5' }]);
  const [check] = checksOf(stackBender);
  const { lines } = workOf(stackBender, valuesOf(stackBender, check as Check), 'mm', () => '');
  expect(lines).toContainEqual(
    expect.objectContaining({ role: 'constant', equation: 'f = 1.5', value: 1.5 }),
  );
});

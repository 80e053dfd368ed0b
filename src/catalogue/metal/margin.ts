import { formula, input, named, derived, fromMemory } from '../../core/define';
import { notInTable, Refusal } from '../../core/refusal';
import { findMetal, METALS } from '../../tables/metals';
import { namesOf } from '../../tables/names';

/** The yield of a metal by its name; a modulus in its place tells nothing of strength. */
function yieldOf(name: string): number {
  const isNumber = Number.isFinite(Number.parseFloat(name));
  try {
    const metal = findMetal(name);
    if (metal.yield !== undefined) return metal.yield;
  } catch (error) {
    if (!(error instanceof Refusal) || !isNumber) throw error;
    throw new Refusal(
      `is ${name}; of a number the strength is not known, so it takes the name of a metal such as "P20"`,
      undefined,
      '#N/A',
    );
  }
  return notInTable('metal', `is ${name}, whose strength is not known: the table has no yield to rely on`);
}

export const metalMargin = formula({
  name: 'METAL.MARGIN',
  summary: 'Margin of a stress of your own against the yield of a metal: yield over stress; 1 yields.',
  inputs: [
    input('stress', 'sigma', 'pressure', {
      above: '0 MPa',
      usual: ['0.1 MPa', '2000 MPa'],
      says: 'Highest stress, by von Mises where it acts in several directions',
    }),
    named<'metal', number>(
      'metal',
      'metal',
      {
        what: 'the name of a metal such as "P20" or "6061-T6"',
        read: yieldOf,
        names: () => namesOf(METALS),
        binds: { S_y: { gives: 'pressure', says: 'Yield of the metal at 20 °C, typical', from: (si) => si } },
      },
      { says: 'Metal that bears it' },
    ),
  ],
  steps: { n_y: { gives: 'ratio', expr: 'S_y/sigma', says: 'How many times the stress the metal bears' } },
  result: 'n_y',
  sources: [
    derived('Yield over stress'),
    fromMemory('Typical yield of the table of metals, except where METAL.VALUE tells its source'),
  ],
  notes: [
    'Functions that know their load and their metal tell their margin themselves: SHOW.MARGIN.',
    'Yield is that at 20 °C. Above 100 °C it is less, and aluminum loses it for good.',
  ],
  cautions: [
    { when: 'n_y < 1', says: 'Does not hold: the metal yields.' },
    { when: 'n_y >= 1 and n_y < 1.2', says: 'Little to spare: close to yield.' },
    {
      says: 'Yield is typical, not guaranteed, and says nothing of many cycles: notches and welds break far below it. Where a failure can hurt someone, have it looked at by a licensed engineer.',
    },
  ],
  related: ['SHOW.MARGIN', 'METAL.VALUE', 'SPRING.MARGIN'],
});

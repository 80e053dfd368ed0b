import { named, type Input, type Limits } from '../core/define';
import { namesOf } from '../tables/names';
import { findResin, resinKind, RESINS, resinValue, type Resin, type ResinProperty } from '../tables/resins';

export const RESIN_NAME = {
  what: 'the name of a resin such as "PP" or "ABS"',
  changes: [
    {
      basis: 2,
      says: 'Unfilled and filled grades are rows of their own, with narrower ranges; the diffusivity is the effective one, as the cooling of molded parts shows it.',
    },
  ],
} as const;

/** What to watch for with a resin; of one that is given as a number nothing is known. */
export const notesOfResin = ({ notes = [] }: Partial<Pick<Resin, 'notes'>>): readonly string[] => notes;

/** One property of a resin, with the notes of the row that it was read from. */
export interface ResinNumber extends Partial<Pick<Resin, 'notes'>> {
  readonly value: number;
}

/**
 * A resin by name, or the one property that a function needs of it as a number. Gives that property by `symbol`.
 */
export const resinWith = <const N extends string>(
  name: N,
  symbol: string,
  property: ResinProperty,
  limits: Limits,
  says: string,
): Input<N, ResinNumber> => {
  const kind = resinKind(property);
  return named<N, ResinNumber>(
    name,
    name,
    {
      ...RESIN_NAME,
      read: (text) => {
        const resin = findResin(text);
        return { value: resinValue(resin, property).value, notes: resin.notes };
      },
      names: () => namesOf(RESINS),
      notes: notesOfResin,
      number: { kind, says: `its ${property}`, means: (value) => ({ value }), ...limits },
      binds: {
        [symbol]: {
          gives: kind,
          says: `${property[0]?.toUpperCase() ?? ''}${property.slice(1)} of the resin`,
          from: ({ value }) => value,
        },
      },
    },
    { says },
  );
};

import { named, type Binding, type Input } from '../core/define';
import type { Yielding } from '../core/strength';
import { findMetal, METALS, type Metal } from '../tables/metals';
import { namesOf } from '../tables/names';

export const METAL_NAME = {
  what: 'the name of a metal such as "P20" or "6061-T6"',
  changes: [
    {
      basis: 2,
      says: 'Values of pages that quote data sheets, in place of memory; a bare H13 is the annealed one, S50C a row of its own.',
    },
  ],
} as const;

/** What a person should know of the row; of a metal that is given as a number nothing is known. */
export const notesOfMetal = ({ note }: Pick<Metal, 'note'>): readonly string[] =>
  note === undefined ? [] : [note];

/** What the elastic functions need to know of a metal; of one given by its modulus alone the strength is not known. */
interface Elastic extends Yielding, Pick<Metal, 'note'> {
  readonly modulus: number;
  readonly poisson: number;
}

/** Of a metal that is given by its modulus alone. */
const USUAL_POISSON = 0.3;

const bind = (
  says: string,
  gives: Binding<Elastic>['gives'],
  from: Binding<Elastic>['from'],
): Binding<Elastic> => ({
  gives,
  says,
  from,
});

const indexed = (symbol: string, index: string): string => (index === '' ? symbol : `${symbol}_${index}`);

/**
 * A metal by name, or Young's modulus as a number (Poisson's ratio then 0.3). Gives the symbols `E` and `nu`, with
 * `index` where a function has two metals.
 */
export const metal = <const N extends string>(name: N, index: string, says: string): Input<N, Elastic> =>
  named<N, Elastic>(
    name,
    name,
    {
      ...METAL_NAME,
      read: (text) => findMetal(text),
      names: () => namesOf(METALS),
      notes: notesOfMetal,
      number: {
        kind: 'pressure',
        says: 'Young’s modulus',
        min: '0.5 GPa',
        max: '700 GPa',
        means: (modulus) => ({ modulus, poisson: USUAL_POISSON }),
      },
      binds: {
        [indexed('E', index)]: bind(`Young’s modulus of ${name}`, 'pressure', ({ modulus }) => modulus),
        [indexed('nu', index)]: bind(`Poisson’s ratio of ${name}`, 'ratio', ({ poisson }) => poisson),
      },
    },
    { says },
  );

interface Expanding extends Pick<Metal, 'note'> {
  readonly expansion: number;
}

/** A metal by name, or its coefficient of expansion as a number. Gives the symbol `alpha`, with `index`. */
export const expandingMetal = <const N extends string>(
  name: N,
  index: string,
  says: string,
): Input<N, Expanding> =>
  named<N, Expanding>(
    name,
    name,
    {
      ...METAL_NAME,
      read: (text) => findMetal(text),
      names: () => namesOf(METALS),
      notes: notesOfMetal,
      number: {
        kind: 'expansion',
        says: 'its coefficient of expansion',
        min: '0.0000001 1/°C',
        max: '0.0001 1/°C',
        means: (expansion) => ({ expansion }),
      },
      binds: {
        [index === '' ? 'alpha_T' : `alpha_${index}`]: {
          gives: 'expansion',
          says: `Coefficient of expansion of ${name}`,
          from: (found) => found.expansion,
        },
      },
    },
    { says },
  );

import { named, type Binding, type Input } from '../core/define';
import type { Yielding } from '../core/strength';
import { findMetal } from '../tables/metals';

/** What the elastic functions need to know of a metal; of one given by its modulus alone the strength is not known. */
interface Elastic extends Yielding {
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
      what: 'the name of a metal such as "P20" or "6061-T6"',
      read: (text) => findMetal(text),
      number: {
        kind: 'pressure',
        says: 'Young’s modulus',
        above: '0 MPa',
        means: (modulus) => ({ modulus, poisson: USUAL_POISSON }),
      },
      binds: {
        [indexed('E', index)]: bind(`Young’s modulus of ${name}`, 'pressure', ({ modulus }) => modulus),
        [indexed('nu', index)]: bind(`Poisson’s ratio of ${name}`, 'ratio', ({ poisson }) => poisson),
      },
    },
    { says },
  );

interface Expanding {
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
      what: 'the name of a metal such as "P20" or "6061-T6"',
      read: (text) => findMetal(text),
      number: {
        kind: 'expansion',
        says: 'its coefficient of expansion',
        above: '0 1/°C',
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

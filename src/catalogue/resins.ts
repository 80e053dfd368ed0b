import { named, type Input, type Limits } from '../core/define';
import { findResin, resinKind, resinValue, type ResinProperty } from '../tables/resins';

/**
 * A resin by name, or the one property that a function needs of it as a number. Gives that property by `symbol`.
 */
export const resinWith = <const N extends string>(
  name: N,
  symbol: string,
  property: ResinProperty,
  limits: Limits,
  says: string,
): Input<N, number> => {
  const kind = resinKind(property);
  return named<N, number>(
    name,
    name,
    {
      what: 'the name of a resin such as "PP" or "ABS"',
      read: (text) => resinValue(findResin(text), property).value,
      number: { kind, says: `its ${property}`, means: (value) => value, ...limits },
      binds: {
        [symbol]: {
          gives: kind,
          says: `${property[0]?.toUpperCase() ?? ''}${property.slice(1)} of the resin`,
          from: (value) => value,
        },
      },
    },
    { says },
  );
};

import { choice, named, type Change, type Input } from '../core/define';
import { Refusal } from '../core/refusal';
import { drillOfNumber, findDrill, findDrilled } from '../tables/drillName';
import { namesOf } from '../tables/names';
import { DRILL_CHOICES, DRILLS, nearestDrill, type Drill, type DrillChoice } from '../tables/drills';

export const LARGE_DRILLS_CHANGE: Change = {
  basis: 2,
  says: 'The fraction drills go on from 1-1/2 to 2-1/4 in.',
};

const DRILL_NAME = 'a drill such as "#7", "F", "7/32" or "5.0 mm"';

/** A drill by its name. A cell with a number may hold that of a numbered drill or a diameter. */
export const drillName = named(
  'name',
  'name',
  {
    what: DRILL_NAME,
    names: () => namesOf(DRILLS),
    read: (text, system, cell) => (cell === 'text' ? findDrill : drillOfNumber)(text, system),
  },
  { says: 'Name of the drill' },
);

/** What a function needs of a hole that was drilled: it may be of no standard size. */
export interface Drilled {
  readonly diameter: number;
}
export const drilledReading = {
  what: DRILL_NAME,
  read: findDrilled,
  names: () => namesOf(DRILLS),
  number: {
    kind: 'length',
    says: 'its diameter',
    above: '0 mm',
    means: (diameter: number): Drilled => ({ diameter }),
  },
} as const;
const byNameOrDiameter = (symbol: string) =>
  ({
    ...drilledReading,
    binds: {
      [symbol]: { gives: 'length', says: 'Diameter of the drill', from: ({ diameter }: Drilled) => diameter },
    },
  }) as const;

/** A drill by its name or diameter, which is given as `symbol`. */
export const drilled = <const N extends string>(name: N, symbol: string, says: string): Input<N, Drilled> =>
  named<N, Drilled>(name, name, byNameOrDiameter(symbol), { says });

export const drilledIfGiven = <const N extends string>(
  name: N,
  symbol: string,
  options: { readonly says: string; readonly whenLeftOut: string },
): Input<N, Drilled | undefined> =>
  named<N, Drilled>(name, name, byNameOrDiameter(symbol), { ...options, optional: true });

export const drillSeries = choice('series', DRILL_CHOICES, {
  default: 'all',
  says: 'Drills to choose from; "inch" is number, letter and fraction',
});

/** The nearest drill of a series; refused beyond its ends. */
export function nearestIn(series: DrillChoice, diameter: number, round?: 'nearest' | 'up' | 'down'): Drill {
  try {
    return nearestDrill(diameter, series, round);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    throw new Refusal(`has no drill for it: ${error.message}`, 'series');
  }
}

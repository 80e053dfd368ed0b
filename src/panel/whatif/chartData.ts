import { numberText } from '../../core/format';
import type { CellInput } from '../../workbook/cells';
import type { Outcome } from '../../whatif/run';
import { headsOf, plainText } from '../../whatif/table';

export interface Chart {
  readonly title: string;
  readonly xLabel: string;
  readonly yLabel: string;
  /** What tells the lines apart; undefined where there is one. */
  readonly series?: string;
  /** Many numbers tell the lines apart: they shade into one another. */
  readonly isShaded: boolean;
  /** The values along the axis are words. */
  readonly isOrdinal: boolean;
  /** A result that is no number leaves a gap in its line. */
  readonly points: readonly Point[];
}

export interface Point {
  readonly x: number | string;
  readonly y: number;
  readonly series: number | string;
}

/** More colors are not told apart. */
const MOST_COLOURS = 10;

/** One chart for each result that is a number anywhere. */
export function chartsOf(outcome: Outcome): Chart[] {
  const { inputs, results, rows } = outcome;
  const heads = headsOf(outcome);
  const along = alongOf(inputs.map(({ values }) => values));
  const other = inputs.length > 1 ? 1 - along : undefined;
  const isOrdinal = !isNumbers(inputs[along]?.values ?? []);
  const others = other === undefined ? [] : (inputs[other]?.values ?? []);
  const isShaded = others.length > MOST_COLOURS && isNumbers(others);
  return results.flatMap(({ unit }, index): Chart[] => {
    if (!rows.some((row) => typeof row.results[index] === 'number')) return [];
    const points = rows.map((row): Point => {
      const x = row.inputs[along] ?? null;
      const y = row.results[index];
      return {
        x: isOrdinal || typeof x !== 'number' ? textOf(x) : x,
        y: typeof y === 'number' ? y : NaN,
        series: seriesOf(row.inputs[other ?? -1] ?? null, isShaded),
      };
    });
    return [
      {
        title: [heads[inputs.length + index], ...(other === undefined ? [] : [heads[other]])].join(' by '),
        xLabel: heads[along] ?? '',
        yLabel: unit,
        ...(other !== undefined && { series: heads[other] ?? '' }),
        isShaded,
        isOrdinal,
        points: isOrdinal ? points : [...points].sort((a, b) => Number(a.x) - Number(b.x)),
      },
    ];
  });
}

/** The input along the axis: numbers before words, more values before fewer. */
function alongOf([first = [], second]: readonly (readonly CellInput[])[]): number {
  if (second === undefined) return 0;
  if (isNumbers(first) !== isNumbers(second)) return isNumbers(first) ? 0 : 1;
  return second.length > first.length ? 1 : 0;
}

const seriesOf = (value: CellInput, isShaded: boolean): number | string =>
  isShaded && typeof value === 'number' ? value : textOf(value);

const isNumbers = (values: readonly CellInput[]): boolean =>
  values.every((value) => typeof value === 'number');

const textOf = (value: CellInput): string =>
  value === null ? 'blank' : typeof value === 'number' ? numberText(value) : plainText(value);

/** What a chart shows now: its references read from the calculated cells, the file's own values where that cannot be. */
import { CellError, type Matrix } from '../../cells/value';
import type { Chart, Plot, Series, Values, Words } from '../../package/drawings/model';

/** Cells by a reference as a formula names them; undefined where it cannot be read. */
export type Look = (reference: string) => Matrix | undefined;

export type Datum = number | string | null;

export interface ReadSeries extends Omit<Series, 'name' | 'along' | 'values'> {
  readonly name: string;
  readonly along: readonly Datum[] | undefined;
  readonly alongFormat?: string;
  readonly values: readonly (number | null)[];
  readonly valuesFormat?: string;
}

export interface ReadPlot extends Omit<Plot, 'series'> {
  readonly series: readonly ReadSeries[];
}

export interface ReadChart extends Omit<Chart, 'plots' | 'title' | 'along' | 'values' | 'second'> {
  readonly title: string;
  readonly plots: readonly ReadPlot[];
  readonly along: ReadAxis;
  readonly values: ReadAxis;
  readonly second?: ReadAxis;
}

export type ReadAxis = Omit<Chart['along'], 'title'> & { readonly title: string };

export function readChartData(chart: Chart, look: Look): ReadChart {
  const words = (one: Words | undefined): string => (one ? wordsNow(one, look) : '');
  const axis = ({ title, ...rest }: Chart['along']): ReadAxis => ({ ...rest, title: words(title) });
  const { second, ...rest } = chart;
  let count = 0;
  return {
    ...rest,
    title: words(chart.title),
    along: axis(chart.along),
    values: axis(chart.values),
    ...(second && { second: axis(second) }),
    plots: chart.plots.map((plot) => ({
      ...plot,
      series: plot.series.map((series): ReadSeries => {
        count++;
        const { along, values, ...looks } = series;
        return {
          ...looks,
          name: words(series.name) || `Series ${count}`,
          along: along && valuesNow(along, look),
          ...(along?.numberFormat !== undefined && { alongFormat: along.numberFormat }),
          values: valuesNow(values, look).map((value) => (typeof value === 'number' ? value : null)),
          ...(values.numberFormat !== undefined && { valuesFormat: values.numberFormat }),
        };
      }),
    })),
  };
}

function wordsNow({ text, reference }: Words, look: Look): string {
  const cells = reference === undefined ? undefined : look(reference);
  if (!cells) return text;
  return cells
    .flat()
    .flatMap((value) => (value === null || value instanceof CellError ? [] : [String(value)]))
    .join(' ');
}

function valuesNow({ cached, reference }: Values, look: Look): readonly Datum[] {
  const cells = reference === undefined ? undefined : look(reference);
  if (!cells) return cached;
  // Of words in several rows and columns the last level stands beside the values.
  const isBlock = cells.length > 1 && (cells[0]?.length ?? 0) > 1;
  const line = isBlock ? cells.map((row) => row.at(-1) ?? null) : cells.flat();
  return line.map((value) =>
    value instanceof CellError ? null : typeof value === 'boolean' ? Number(value) : value,
  );
}

/// <reference types="office-js" />
import type { WrittenTable } from '../panel/host';

/** Cells that a chart covers, and how many charts stand beside a table. */
const CHART = { rows: 15, columns: 8 };
const MOST_CHARTS = 6;

/** Makes a written table one of Excel's own, with a chart of every result beside it. */
export const dressTable = (written: WrittenTable, typed: (text: string) => unknown): Promise<void> =>
  Excel.run(async (context) => {
    const { sheet, row, column, rows, columns, headings, formats } = written;
    const onSheet = context.workbook.worksheets.getItem(sheet);
    const whole = onSheet.getRangeByIndexes(row, column, rows, columns);
    whole.load('values');
    await context.sync();
    const values = whole.values as (string | number | boolean)[][];
    const [labels = [], units = []] = values;
    const lines = values.slice(headings);
    // A table of Excel has one line of heading.
    const heads = labels.map((label, at) => {
      const unit = units[at] ?? '';
      return headings > 1 && unit !== '' ? `${String(label)} (${String(unit)})` : String(label);
    });
    onSheet.getRangeByIndexes(row, column, 1, columns).values = [heads.map(typed)];
    for (let extra = 1; extra < headings; extra++) {
      onSheet
        .getRangeByIndexes(row + 1, column, 1, 1)
        .getEntireRow()
        .delete(Excel.DeleteShiftDirection.up);
    }
    onSheet.tables.add(onSheet.getRangeByIndexes(row, column, lines.length + 1, columns), true);
    formats.forEach((format, at) => {
      onSheet.getRangeByIndexes(row + 1, column + at, lines.length, 1).numberFormat = lines.map(() => [
        format,
      ]);
    });
    onSheet.getRangeByIndexes(row, column, lines.length + 1, columns).format.autofitColumns();
    addCharts(onSheet, written, heads, lines);
    await context.sync();
  });

/** One chart for each result that is a number; the last input runs along it, each value of the first is a line. */
const addCharts = (
  onSheet: Excel.Worksheet,
  { row, column, columns, inputs }: WrittenTable,
  heads: readonly string[],
  lines: readonly (readonly unknown[])[],
): void => {
  const along = inputs - 1;
  const isNumeric = (at: number) => lines.every((line) => typeof line[at] === 'number');
  const blocks = inputs > 1 ? blocksOf(lines) : [{ name: '', first: 0, count: lines.length }];
  const cells = (at: number, { first, count }: Block) =>
    onSheet.getRangeByIndexes(row + 1 + first, column + at, count, 1);
  const results = heads.map((_, at) => at).filter((at) => at >= inputs && isNumeric(at));
  results.slice(0, MOST_CHARTS).forEach((result, place) => {
    const [block, ...others] = blocks;
    if (!block) return;
    const type = isNumeric(along) ? Excel.ChartType.xyscatterLines : Excel.ChartType.lineMarkers;
    const chart = onSheet.charts.add(type, cells(result, block), Excel.ChartSeriesBy.columns);
    const name = (one: Block): string =>
      inputs > 1 ? `${heads[0] ?? ''} ${one.name}` : (heads[result] ?? '');
    const first = chart.series.getItemAt(0);
    first.name = name(block);
    first.setXAxisValues(cells(along, block));
    for (const other of others) {
      const series = chart.series.add(name(other));
      series.setValues(cells(result, other));
      series.setXAxisValues(cells(along, other));
    }
    chart.title.text = heads[result] ?? '';
    chart.legend.visible = blocks.length > 1;
    chart.axes.categoryAxis.title.text = heads[along] ?? '';
    chart.axes.valueAxis.title.text = heads[result] ?? '';
    const top = row + place * (CHART.rows + 1);
    const left = column + columns + 1;
    chart.setPosition(
      onSheet.getRangeByIndexes(top, left, 1, 1),
      onSheet.getRangeByIndexes(top + CHART.rows - 1, left + CHART.columns - 1, 1, 1),
    );
  });
};

/** Lines one below another with the same first input. */
interface Block {
  readonly name: string;
  readonly first: number;
  readonly count: number;
}

const blocksOf = (lines: readonly (readonly unknown[])[]): Block[] => {
  const starts = lines.flatMap((line, at) => (at > 0 && lines[at - 1]?.[0] === line[0] ? [] : [at]));
  return starts.map((first, at) => ({
    name: String(lines[first]?.[0]),
    first,
    count: (starts[at + 1] ?? lines.length) - first,
  }));
};

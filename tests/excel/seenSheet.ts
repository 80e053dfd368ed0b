import { areaAddress } from '../../src/cells/address';
import { columnPixels } from '../../src/package/pixels';
import { drawingsOf } from '../../src/package/drawings/readDrawings';
import { readPrintSetup } from '../../src/package/readPrint';
import { cellFinder, type Sheet, type Workbook } from '../../src/package/model';

/** The style of a cell; a line between two cells counts for both, whichever of them has it. */
export function styleWithLines(workbook: Workbook, sheet: Sheet) {
  const cellAt = cellFinder(sheet);
  const own = (row: number, column: number) => workbook.styles[cellAt(row, column)?.style ?? 0];
  return (row: number, column: number) => {
    const style = own(row, column);
    const borders = {
      top: own(row - 1, column)?.borders.bottom,
      bottom: own(row + 1, column)?.borders.top,
      left: own(row, column - 1)?.borders.right,
      right: own(row, column + 1)?.borders.left,
      ...style?.borders,
    };
    const drawn = Object.entries(borders).filter(([, line]) => line !== undefined);
    return { ...style, borders: Object.fromEntries(drawn) };
  };
}

/** Columns as wide as a screen shows them, each by itself. */
export const widthsOf = ({ columns }: Sheet): Readonly<Record<number, number>> =>
  Object.fromEntries(
    columns.flatMap(({ first, last, width }) =>
      width === undefined
        ? []
        : Array.from({ length: last - first + 1 }, (_, at) => [first + at, columnPixels(width)]),
    ),
  );

/** How a sheet is printed, as its part of the file has it. */
export function printOf(workbook: Workbook, name: string): readonly unknown[] {
  const at = workbook.sheets.findIndex((sheet) => sheet.name === name);
  const xml = new TextDecoder().decode(workbook.parts.get(`xl/worksheets/sheet${at + 1}.xml`));
  const parts = /<(?:\w+:)?(?:pageMargins|pageSetup|headerFooter)\b[\s\S]*?(?:\/>|<\/headerFooter>)/g;
  return [readPrintSetup(workbook.parts, name), ...[...xml.matchAll(parts)].map(([text]) => text)];
}

/** All that a person sees of a sheet, in words that do not depend on how the file was made. */
export function seenSheet(workbook: Workbook, name: string) {
  const sheet = workbook.sheets.find((one) => one.name === name);
  if (!sheet) throw new Error(`no sheet ${name}`);
  const style = styleWithLines(workbook, sheet);
  return {
    cells: sheet.cells
      .filter(({ value, formula, style: index }) => value !== null || formula !== undefined || index !== 0)
      .map(({ row, column, value, formula }) => ({
        at: `${row} ${column}`,
        formula,
        // What a formula gives is not worked out yet in a file that was only written.
        value: formula === undefined ? value : 'calculated',
        style: style(row, column),
      })),
    merges: sheet.merges,
    colors: sheet.conditionalFormats.map(({ areas, formulas, style: overlay }) => ({
      areas: areas.map(areaAddress),
      formulas,
      overlay,
    })),
    heights: sheet.rows.flatMap(({ row, height }) => (height === undefined ? [] : [[row, height]])),
    widths: widthsOf(sheet),
    frozen: sheet.frozen,
    print: printOf(workbook, name),
    charts: drawingsOf(workbook, name).map((drawing) => {
      if (drawing.shows !== 'chart') return drawing.shows;
      const { title, along, values, plots, legend } = drawing.chart;
      return {
        words: [title?.text, along.title?.text, values.title?.text],
        plots: plots.map(({ kind, series }) => [
          kind,
          series.map((one) => [one.name?.text, one.along?.reference, one.values.reference]),
        ]),
        legend,
        place: drawing.anchor,
      };
    }),
  };
}

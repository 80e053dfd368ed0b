/// <reference types="office-js" />
import { tokenize } from '../cells/formulaTokens';
import { CellError } from '../cells/value';
import type { CellTrace, Range } from '../panel/host';
import { cellValue } from './cellValue';

/** Of a chain of errors, so many cells are told. */
const MOST_STEPS = 20;
/** Cells of an area that are looked through for an error. */
const MOST_CELLS = 5000;

/** What Excel knows of what a cell reads and what reads it. Undefined in an Excel that tells it to no add-in. */
export async function traceInExcel(cell: Range): Promise<CellTrace | undefined> {
  const { requirements } = Office.context;
  if (!requirements.isSetSupported('ExcelApi', '1.13')) return undefined;
  const { formula, isError } = await look(cell);
  const [reads, readers] = await Promise.all([
    formula === '' ? [] : areasOf(cell, (range) => range.getDirectPrecedents()),
    areasOf(cell, (range) => range.getDirectDependents()),
  ]);
  return {
    reads,
    readsMore: readsMore(formula),
    readers,
    error: isError && formula !== '' ? await errorPath(reads) : [],
  };
}

const rangeIn = ({ workbook }: Excel.RequestContext, { sheet, row, column, rows, columns }: Range) =>
  workbook.worksheets.getItem(sheet).getRangeByIndexes(row, column, rows, columns);

const look = (cell: Range): Promise<{ readonly formula: string; readonly isError: boolean }> =>
  Excel.run(async (context) => {
    const range = rangeIn(context, cell);
    range.load('formulas,valueTypes');
    await context.sync();
    const content: unknown = range.formulas[0]?.[0];
    const isFormula = typeof content === 'string' && content.startsWith('=');
    return { formula: isFormula ? content : '', isError: String(range.valueTypes[0]?.[0]) === 'Error' };
  });

/** Excel throws where there are none (OfficeDev/office-js #2206). */
async function areasOf(cell: Range, ask: (range: Excel.Range) => Excel.WorkbookRangeAreas): Promise<Range[]> {
  try {
    return await Excel.run(async (context) => {
      const { ranges } = ask(rangeIn(context, cell));
      ranges.load('items/rowIndex,items/columnIndex,items/rowCount,items/columnCount,items/worksheet/name');
      await context.sync();
      return ranges.items.map(({ worksheet, rowIndex, columnIndex, rowCount, columnCount }) => ({
        sheet: worksheet.name,
        row: rowIndex,
        column: columnIndex,
        rows: rowCount,
        columns: columnCount,
      }));
    });
  } catch (error) {
    if (codeOf(error) === 'ItemNotFound') return [];
    throw error;
  }
}

const codeOf = (error: unknown): unknown =>
  typeof error === 'object' && error !== null && 'code' in error ? error.code : undefined;

/** From what an erroneous cell reads to the cell where the error began. */
async function errorPath(reads: readonly Range[]): Promise<Range[]> {
  const path: Range[] = [];
  for (let next = await firstError(reads); next && path.length < MOST_STEPS;) {
    const cell: Range = next;
    if (path.some((one) => JSON.stringify(one) === JSON.stringify(cell))) break;
    path.push(cell);
    next = await firstError(await areasOf(cell, (range) => range.getDirectPrecedents()));
  }
  return path;
}

async function firstError(areas: readonly Range[]): Promise<Range | undefined> {
  for (const area of areas.filter(({ rows, columns }) => rows * columns <= MOST_CELLS)) {
    const at = await Excel.run(async (context) => {
      const range = rangeIn(context, area);
      range.load('values,valueTypes');
      await context.sync();
      const isError = range.values.map((line: unknown[], down) =>
        line.map((value, across) => cellValue(value, range.valueTypes[down]?.[across]) instanceof CellError),
      );
      const row = isError.findIndex((line) => line.includes(true));
      return row < 0 ? undefined : { row, column: isError[row]?.indexOf(true) ?? 0 };
    });
    if (at)
      return {
        sheet: area.sheet,
        row: area.row + at.row,
        column: area.column + at.column,
        rows: 1,
        columns: 1,
      };
  }
  return undefined;
}

/** References that are made while calculating, other workbooks, and what changes by itself. */
const MORE = /^(?:INDIRECT|OFFSET|NOW|TODAY|RAND|RANDBETWEEN|RANDARRAY|CELL|INFO)$/i;

const readsMore = (formula: string): boolean =>
  tokenize(formula.slice(1)).some(
    ({ kind, text }) =>
      (kind === 'name' && MORE.test(text)) || (kind !== 'string' && /\[[^\]]+\][^\]]*!/.test(text)),
  );

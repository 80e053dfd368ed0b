/// <reference types="office-js" />
import type { CellValue } from '../../cells/value';
import { cellValue } from '../cellValue';
import { typedFormula } from '../formulas';
import type { Range } from '../../panel/host';

/** What a check of the open workbook looks at. */
export interface Facts {
  readonly sheets: readonly SheetFacts[];
  /** Excel's word: `Automatic`, `AutomaticExceptTables`, `Manual`. */
  readonly mode: string;
  /** Circular references are calculated round and round. */
  readonly iterates: boolean;
}

export interface SheetFacts {
  readonly name: string;
  readonly isProtected: boolean;
  readonly formulas: readonly FormulaCell[];
  readonly valueAt: (row: number, column: number) => CellValue;
}

export interface FormulaCell {
  readonly row: number;
  readonly column: number;
  /** As people type it, with its `=`. */
  readonly formula: string;
  readonly value: CellValue;
}

/** Cells that are asked for at once: Excel on the web refuses answers above 5 MB. */
const BLOCK = 40_000;

/** Reads the open workbook, sheet by sheet. */
export const readFacts = (): Promise<Facts> =>
  Excel.run(async (context) => {
    const { worksheets, application } = context.workbook;
    worksheets.load('items/name');
    application.load('calculationMode');
    const knowsIteration = Office.context.requirements.isSetSupported('ExcelApi', '1.9');
    if (knowsIteration) application.iterativeCalculation.load('enabled');
    await context.sync();
    const sheets: SheetFacts[] = [];
    for (const sheet of worksheets.items) sheets.push(await readSheet(context, sheet));
    return {
      sheets,
      mode: application.calculationMode,
      iterates: knowsIteration && application.iterativeCalculation.enabled,
    };
  });

async function readSheet(context: Excel.RequestContext, sheet: Excel.Worksheet): Promise<SheetFacts> {
  const used = sheet.getUsedRangeOrNullObject(true);
  used.load('rowIndex,columnIndex,rowCount,columnCount');
  sheet.protection.load('protected');
  await context.sync();
  const { name } = sheet;
  const isProtected = sheet.protection.protected;
  if (used.isNullObject) return { name, isProtected, formulas: [], valueAt: () => null };
  const { rowIndex, columnIndex, rowCount, columnCount } = used;
  const values: CellValue[][] = [];
  const formulas: FormulaCell[] = [];
  const step = Math.max(1, Math.floor(BLOCK / columnCount));
  for (let from = 0; from < rowCount; from += step) {
    const part = sheet.getRangeByIndexes(
      rowIndex + from,
      columnIndex,
      Math.min(step, rowCount - from),
      columnCount,
    );
    part.load('formulas,values,valueTypes');
    await context.sync();
    part.formulas.forEach((contents: unknown[], down) => {
      const row = contents.map((_, across) =>
        cellValue(part.values[down]?.[across], part.valueTypes[down]?.[across]),
      );
      values.push(row);
      contents.forEach((content, across) => {
        if (typeof content !== 'string' || !content.startsWith('=')) return;
        formulas.push({
          row: rowIndex + from + down,
          column: columnIndex + across,
          formula: typedFormula(content),
          value: row[across] ?? null,
        });
      });
    });
  }
  return {
    name,
    isProtected,
    formulas: withoutSpilled(formulas),
    valueAt: (row, column) => values[row - rowIndex]?.[column - columnIndex] ?? null,
  };
}

/** Excel repeats a formula in every cell that it fills: kept is the first, above and left of the others. */
function withoutSpilled(formulas: readonly FormulaCell[]): FormulaCell[] {
  const at = new Map(formulas.map((cell) => [`${cell.row} ${cell.column}`, cell.formula]));
  return formulas.filter(
    ({ row, column, formula }) =>
      at.get(`${row - 1} ${column}`) !== formula && at.get(`${row} ${column - 1}`) !== formula,
  );
}

/** The values of cells, as the work view asks for them. */
export const readFrom =
  ({ sheets }: Facts) =>
  (range: Range): Promise<CellValue[][]> => {
    const sheet = sheets.find(({ name }) => name.toLowerCase() === range.sheet.toLowerCase());
    return Promise.resolve(
      Array.from({ length: range.rows }, (_, down) =>
        Array.from(
          { length: range.columns },
          (__, across) => sheet?.valueAt(range.row + down, range.column + across) ?? null,
        ),
      ),
    );
  };

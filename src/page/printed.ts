import type { WorksheetFunction } from '../call/worksheetFunction';
import type { Area } from '../cells/address';
import type { Workbook } from '../package/model';
import { lookWith } from '../render/drawings/look';
import { printHtml, type Paper } from '../render/printPage';
import { CalculatedWorkbook } from '../workbook/calculated';
import { workToPrint } from '../work/workToPrint';
import { ruleLooks } from '../workbook/looks';
import { decimalSign } from '../cells/decimalSign';

export type PrintPart = 'sheet' | 'selection' | 'all';

/** What a person wants on paper. */
export interface PrintWish {
  readonly file: string;
  readonly paper: Paper;
  readonly gridlines: boolean;
  readonly revision: string;
  /** Absent = every sheet that can be seen. */
  readonly sheet?: string;
  /** Of the one sheet. */
  readonly area?: Area;
  /** Cells whose work is printed behind the sheets. */
  readonly work?: { readonly sheet: string; readonly area: Area };
}

/** Milliseconds that the rules' colors may take. */
const LIMIT = 20_000;

/** The workbook as one HTML page that a browser prints. */
export async function printed(
  workbook: Workbook,
  functions: readonly WorksheetFunction[],
  { sheet, area, work, ...wish }: PrintWish,
): Promise<string> {
  const book = CalculatedWorkbook.of(workbook, functions, { time: LIMIT });
  const explained = workbook.sheets.find(({ name }) => name === work?.sheet);
  const shownWork =
    work && explained ? await workToPrint(book, functions, [{ sheet: explained, area: work.area }]) : [];
  return printHtml(workbook, {
    ...wish,
    date: new Date().toLocaleDateString('sv'),
    value: (of, row, column) => book.at(of, row, column),
    decimalComma: decimalSign() === ',',
    overlays: ruleLooks(book, workbook.sheets),
    look: lookWith((formula) => book.evaluate(formula)),
    ...(sheet !== undefined && { sheets: [sheet] }),
    ...(area && { area }),
    ...(work && {
      work: [
        shownWork.length > 0
          ? shownWork.join('\n')
          : '<p>The selected cells hold no MOLD function whose work could be shown.</p>',
      ],
    }),
  });
}

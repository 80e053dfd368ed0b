/// <reference types="office-js" />
import { tokenize } from '../cells/formulaTokens';
import type { Separator } from '../panel/host';

/** Cells of the active sheet that are looked through for a formula with two arguments. */
const MOST_CELLS = 20_000;

/**
 * What stands between arguments in this Excel, which it tells nobody: read from how it shows a formula that has two;
 * guessed where the sheet has none, since where the decimal sign is a comma the other is most often a semicolon.
 */
export const readSeparator = (): Promise<Separator> =>
  Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getActiveWorksheet();
    const used = sheet.getUsedRangeOrNullObject(true);
    used.load('rowIndex,columnIndex,rowCount,columnCount');
    const knowsDecimal = Office.context.requirements.isSetSupported('ExcelApi', '1.11');
    const { application } = context.workbook;
    if (knowsDecimal) application.load('decimalSeparator');
    await context.sync();
    if (!used.isNullObject) {
      const { rowIndex, columnIndex, rowCount, columnCount } = used;
      const rows = Math.min(rowCount, Math.max(1, Math.floor(MOST_CELLS / columnCount)));
      const looked = sheet.getRangeByIndexes(rowIndex, columnIndex, rows, columnCount);
      looked.load('formulas,formulasLocal');
      await context.sync();
      const local = looked.formulasLocal.flat() as unknown[];
      const sign = looked.formulas
        .flat()
        .flatMap((formula: unknown, at) => separatorIn(formula, local[at]) ?? [])[0];
      if (sign !== undefined) return { sign, isGuess: false };
    }
    return { sign: knowsDecimal && application.decimalSeparator === ',' ? ';' : ',', isGuess: true };
  });

/** The sign between arguments of a formula as it is shown, where its neutral form has one. */
export function separatorIn(formula: unknown, shown: unknown): string | undefined {
  if (typeof formula !== 'string' || typeof shown !== 'string' || !formula.startsWith('=')) return undefined;
  if (!betweenArguments(formula).includes(',')) return undefined;
  return betweenArguments(shown).includes(';') ? ';' : ',';
}

/** The signs outside of texts, braces and square brackets. */
function betweenArguments(formula: string): string[] {
  let braces = 0;
  return tokenize(formula.slice(1)).flatMap(({ kind, text }) => {
    if (text === '{') braces++;
    if (text === '}') braces--;
    return kind === 'comma' && braces === 0 ? [text] : [];
  });
}

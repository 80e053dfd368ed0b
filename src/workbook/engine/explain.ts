import { CellError } from '../../cells/value';
import type { ErrorCode } from '../../cells/value';
import { NAMESPACE } from '../../cells/namespace';
import type { WorksheetFunction } from '../../call/worksheetFunction';
import { nearestNames } from '../../tables/names';
import { isCall, tokenize } from '../../cells/formulaTokens';
import type { Token } from '../../cells/formulaTokens';
import { cellAddress, parseArea, parseCell } from '../../cells/address';
import type { Area } from '../../cells/address';
import type { Workbook } from '../../package/model';
import type { Calculator } from './calculator';

/** What a native error means, where nothing closer is known. */
const MEANING: Readonly<Record<ErrorCode, string>> = {
  '#VALUE!': 'A value of the wrong kind: text where a number is needed, or a formula that cannot be read.',
  '#N/A': 'A look-up found nothing.',
  '#NUM!': 'A number outside what the function can take.',
  '#DIV/0!': 'A division by zero or by a blank cell.',
  '#REF!': 'It refers to a cell that is not there.',
  '#NAME?': 'It uses a function or name that is not known.',
  '#NULL!': 'Two ranges that do not meet.',
  '#SPILL!': 'The result needs more cells than are free: clear the ones beside or below.',
  '#CALC!': 'A calculation that gives nothing, such as a filter without a match.',
};

/**
 * The error of a formula, with a message in any case: its own, the name that nobody knows, the cell it comes from, or
 * what the code means.
 */
export function explain(error: CellError, formula: string, context: Context): CellError {
  if (error.message) return error;
  const message =
    (error.code === '#NAME?' ? unknownFunction(formula, context) : undefined) ??
    passedOn(formula, context) ??
    MEANING[error.code];
  return new CellError(error.code, message);
}

/** What a formula stands in. */
export interface Context {
  readonly calculator: Calculator;
  readonly functions: readonly WorksheetFunction[];
  /** Where it stands in a workbook; its cells are looked at. */
  readonly workbook?: Workbook;
  readonly sheet?: number;
}

/** Says which function there is not, and which ones come close. */
function unknownFunction(formula: string, { calculator, functions }: Context): string | undefined {
  const tokens = tokenize(formula);
  const unknown = tokens.find((token, at) => isCall(tokens, at) && !calculator.hasFunction(token.text))?.text;
  if (unknown === undefined) return undefined;
  if (!unknown.toUpperCase().startsWith(`${NAMESPACE}.`)) return `There is no function or name ${unknown}.`;
  const id = unknown.slice(NAMESPACE.length + 1);
  const nearest = nearestNames(
    id,
    functions.map((one) => one.id),
  );
  return `There is no function ${unknown}; nearest: ${nearest.map((one) => `${NAMESPACE}.${one}`).join(', ')}.`;
}

/** Names the first cell in error that the formula reads. */
function passedOn(formula: string, { calculator, workbook, sheet: own }: Context): string | undefined {
  if (!workbook || own === undefined) return undefined;
  for (const { sheetName, area } of references(tokenize(formula))) {
    const sheet =
      sheetName === undefined
        ? own
        : workbook.sheets.findIndex(({ name }) => name.toLowerCase() === sheetName.toLowerCase());
    for (let row = area.top; sheet >= 0 && row <= area.bottom; row++) {
      for (let column = area.left; column <= area.right; column++) {
        if (!(calculator.value(sheet, row, column) instanceof CellError)) continue;
        const where = cellAddress(row, column);
        return `Passed on from ${sheet === own ? where : `${workbook.sheets[sheet]?.name ?? ''}!${where}`}.`;
      }
    }
  }
  return undefined;
}

/** The cells and areas in a formula, with the sheet where one is named. */
function* references(tokens: readonly Token[]): Generator<{ sheetName?: string; area: Area }> {
  for (let at = 0; at < tokens.length; at++) {
    const from = cellText(tokens, at);
    if (from === undefined) continue;
    const named = tokens[at - 1]?.text === '!' ? tokens[at - 2] : undefined;
    const to = tokens[at + 1]?.text === ':' ? cellText(tokens, at + 2) : undefined;
    const area = parseArea(to === undefined ? from : `${from}:${to}`);
    if (area) yield { area, ...(named && { sheetName: unquoted(named) }) };
    if (to !== undefined) at += 2;
  }
}

function cellText(tokens: readonly Token[], at: number): string | undefined {
  const token = tokens[at];
  return token?.kind === 'name' && parseCell(token.text) && !isCall(tokens, at) ? token.text : undefined;
}

function unquoted({ kind, text }: Token): string {
  return kind === 'quoted' ? text.slice(1, -1).replaceAll("''", "'") : text;
}

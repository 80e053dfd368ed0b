import { CellError, type CellValue, type Matrix } from '../../cells/value';
import { cellAddress } from '../../cells/address';
import { NAMESPACE } from '../../cells/namespace';
import { symbolsIn, unitFormula } from '../../call/tools/unitFormula';
import type { WorksheetFunction } from '../../call/worksheetFunction';
import { EquationError } from '../../core/expr/parse';
import type { CellInput, Range } from '../host';

/** A symbol of the equation as a person types it. */
export interface SymbolRow {
  readonly symbol: string;
  readonly value: string;
  readonly unit: string;
}

/** An equation of the shop's own while it is written. */
export interface EquationDraft {
  readonly result: string;
  readonly equation: string;
  readonly rows: readonly SymbolRow[];
  readonly unit: string;
}

export const EMPTY: EquationDraft = { result: '', equation: '', rows: [], unit: '' };

/** What there is to say of a draft: what keeps it from giving a number, or the number. */
export type Said =
  | { readonly says: 'nothing yet' }
  | { readonly says: 'problem'; readonly text: string }
  /** The equation fits its units; these symbols have no value yet. */
  | { readonly says: 'fits'; readonly missing: readonly string[] }
  | { readonly says: 'value'; readonly value: number };

/** The draft with another equation: a row for every symbol, those that were there with their values. */
export function withEquation(draft: EquationDraft, equation: string): EquationDraft {
  let symbols: string[];
  try {
    symbols = symbolsIn(equation);
  } catch (error) {
    // While a person types, most texts are no equations.
    if (error instanceof EquationError) return { ...draft, equation };
    throw error;
  }
  const known = new Map(draft.rows.map((row) => [row.symbol, row]));
  return {
    ...draft,
    equation,
    rows: symbols.map((symbol) => known.get(symbol) ?? { symbol, value: '', unit: '' }),
  };
}

const PLAIN_NUMBER = /^[+-]?[\d.]+(?:e[+-]?\d+)?$/i;

const typed = (text: string): number | string | null => {
  const trimmed = text.trim();
  if (trimmed === '') return null;
  return PLAIN_NUMBER.test(trimmed) && Number.isFinite(Number(trimmed)) ? Number(trimmed) : trimmed;
};

const textOrBlank = (text: string): string | null => text.trim() || null;

/** Stand for the values that are missing, so that units are checked first: in one round they should lead to a number. */
const STAND_INS = [(i: number) => 1 + i, (i: number) => 1 / (2 + i), (i: number) => 17 - i];

/** What the function itself says of the draft: there is no second reader of equations. */
export function judge(draft: EquationDraft, functions: readonly WorksheetFunction[]): Said {
  const { equation, rows, unit } = draft;
  if (equation.trim() === '') return { says: 'nothing yet' };
  const formula = functions.find(({ id }) => id === unitFormula.name);
  const ask = (standIn: (i: number) => number): CellValue => {
    const lines: Matrix = rows.map((row, i) => [
      row.symbol,
      typed(row.value) ?? standIn(i),
      textOrBlank(row.unit),
    ]);
    const inputs = lines.length > 0 ? lines : [[null, null]];
    return formula?.call([[[equation]], inputs, [[textOrBlank(unit)]]])[0]?.[0] ?? null;
  };
  const missing = rows.filter(({ value }) => value.trim() === '').map(({ symbol }) => symbol);
  const answers = (missing.length > 0 ? STAND_INS : STAND_INS.slice(0, 1)).map(ask);
  const value = answers.find((answer) => typeof answer === 'number');
  if (value !== undefined && rows.length === 0)
    return { says: 'problem', text: 'There is no symbol in it: type it into a cell as it is.' };
  if (value !== undefined) return missing.length > 0 ? { says: 'fits', missing } : { says: 'value', value };
  const [answer] = answers;
  return { says: 'problem', text: answer instanceof CellError ? answer.message : 'No number comes of this.' };
}

/** A sign that a sheet would take for the start of a formula. */
const FORMULA_START = /^[-+@]/;

/** The cells of the draft, from the place of the first on: the sheet then holds the equation, not this panel. */
export function equationCells(
  draft: EquationDraft,
  { row, column }: Pick<Range, 'row' | 'column'>,
): CellInput[][] {
  const equation = draft.equation.trim().replace(/^=\s*/, '');
  const at = (down: number, across: number) => cellAddress(row + down, column + across);
  const last = draft.rows.length + 1;
  const inputs = `${at(1, 0)}:${at(draft.rows.length, 2)}`;
  return [
    ['Equation', FORMULA_START.test(equation) ? `(${equation})` : equation, null],
    ...draft.rows.map(({ symbol, value, unit }) => [symbol, typed(value), textOrBlank(unit)]),
    [
      draft.result.trim() || 'Result',
      `=${NAMESPACE}.${unitFormula.name}(${at(0, 1)},${inputs},${at(last, 2)})`,
      textOrBlank(draft.unit),
    ],
  ];
}

/** How many rows and columns the cells of a draft take. */
export const equationSize = (draft: EquationDraft): Pick<Range, 'rows' | 'columns'> => ({
  rows: draft.rows.length + 2,
  columns: 3,
});

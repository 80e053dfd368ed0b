/** The looks that rules lay over cells: colors of verdicts and the like. */
import { shiftFormula } from '../package/shiftFormula';
import type { ConditionalFormat, Sheet, StyleOverlay } from '../package/model';
import { CellError, type CellValue } from '../cells/value';
import type { CalculatedWorkbook } from './calculated';
import { References } from './references';
import { cellAddress, quotedSheet } from '../cells/address';

export type Looks = (sheet: Sheet, row: number, column: number) => readonly StyleOverlay[];

/** Cells of one rule that are looked at; a rule over a whole column says little of most of them. */
const MOST_CELLS = 20_000;

/** Works out every rule of the sheets on the calculated workbook. */
export function ruleLooks(book: CalculatedWorkbook, sheets: readonly Sheet[]): Looks {
  const found = new Map<string, StyleOverlay[]>();
  for (const sheet of sheets) {
    const last = Math.max(0, ...sheet.cells.map(({ row }) => row));
    const rules = [...sheet.conditionalFormats].sort((a, b) => a.priority - b.priority);
    const stopped = new Set<string>();
    for (const rule of rules) {
      for (const { row, column, texts } of cellsOf(rule, last)) {
        const key = keyOf(sheet, row, column);
        if (stopped.has(key) || !holds(book, sheet, rule, row, column, texts)) continue;
        found.set(key, [...(found.get(key) ?? []), rule.style]);
        if (rule.stopIfTrue) stopped.add(key);
      }
    }
  }
  return (sheet, row, column) => found.get(keyOf(sheet, row, column)) ?? [];
}

const keyOf = (sheet: Sheet, row: number, column: number): string => `${sheet.name}\n${row}\n${column}`;

function* cellsOf({ areas, formulas }: ConditionalFormat, last: number) {
  const [base] = areas;
  if (!base) return;
  let count = 0;
  for (const area of areas) {
    for (let row = area.top; row <= Math.min(area.bottom, last); row++) {
      for (let column = area.left; column <= area.right; column++) {
        if (++count > MOST_CELLS) return;
        const texts = formulas.map((formula) => shiftFormula(formula, row - base.top, column - base.left));
        yield { row, column, texts };
      }
    }
  }
}

const COMPARISONS: Readonly<Record<string, (cell: string, a: string, b: string) => string>> = {
  equal: (cell, a) => `${cell}=(${a})`,
  notEqual: (cell, a) => `${cell}<>(${a})`,
  greaterThan: (cell, a) => `${cell}>(${a})`,
  lessThan: (cell, a) => `${cell}<(${a})`,
  greaterThanOrEqual: (cell, a) => `${cell}>=(${a})`,
  lessThanOrEqual: (cell, a) => `${cell}<=(${a})`,
  between: (cell, a, b) => `AND(${cell}>=(${a}),${cell}<=(${b}))`,
  notBetween: (cell, a, b) => `OR(${cell}<(${a}),${cell}>(${b}))`,
};

function holds(
  book: CalculatedWorkbook,
  sheet: Sheet,
  rule: ConditionalFormat,
  row: number,
  column: number,
  [first = '', second = '']: readonly string[],
): boolean {
  const references = new References(book.workbook, book);
  const qualified = (text: string): string => references.qualified(text, { sheet, row, column });
  const cell = `${quotedSheet(sheet.name)}!${cellAddress(row, column)}`;
  const formula =
    rule.kind === 'expression'
      ? qualified(first)
      : COMPARISONS[rule.operator ?? '']?.(cell, qualified(first), qualified(second));
  if (formula === undefined) return false;
  return isTrue(book.evaluate(formula)[0]?.[0] ?? null);
}

const isTrue = (value: CellValue): boolean =>
  !(value instanceof CellError) && value !== null && typeof value !== 'string' && Boolean(value);

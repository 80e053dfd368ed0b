/**
 * The shape of a formula: its text with every cell written as a distance from the formula's own. Formulas of one
 * shape are compiled once, so a column of a hundred thousand copies costs a hundred thousand look-ups.
 */
import { MAX_COLUMNS, MAX_ROWS } from '../../cells/address';

const QUOTE = 34;
const APOSTROPHE = 39;
const OPEN = 40;
const COLON = 58;
const BANG = 33;
const BRACKET = 91;
const DOLLAR = 36;

const isDigit = (c: number): boolean => c >= 48 && c <= 57;
const isLetter = (c: number): boolean => (c >= 65 && c <= 90) || (c >= 97 && c <= 122);
/** Letters, digits, `_ . $ \ ?` and all beyond ASCII: what names and cells are made of. */
const isWord = (c: number): boolean =>
  isLetter(c) || isDigit(c) || c === 95 || c === 46 || c === DOLLAR || c === 92 || c === 63 || c > 127;

/** `names`: upper-case names and tables of the workbook that look like cells, and so are none. */
export function shapeKey(formula: string, row: number, column: number, names: ReadonlySet<string>): string {
  let key = '';
  let copied = 0;
  const length = formula.length;
  for (let at = 0; at < length;) {
    const c = formula.charCodeAt(at);
    if (c === QUOTE || c === APOSTROPHE) {
      const end = formula.indexOf(c === QUOTE ? '"' : "'", at + 1);
      at = end < 0 ? length : end + 1;
    } else if (c === BRACKET) at = bracketEnd(formula, at);
    else if (!isWord(c)) at++;
    else {
      const start = at;
      while (at < length && isWord(formula.charCodeAt(at))) at++;
      if (isDigit(c) || c === 46) continue;
      const next = formula.charCodeAt(at);
      if (next === OPEN || next === BANG || next === BRACKET) continue;
      if (next === COLON && isSheetRange(formula, at + 1)) continue;
      const place = relative(formula, start, at, row, column);
      if (place === undefined) continue;
      if (names.size > 0 && names.has(formula.slice(start, at).toUpperCase())) continue;
      key += formula.slice(copied, start) + place;
      copied = at;
    }
  }
  return copied === 0 ? formula : key + formula.slice(copied);
}

/** Behind the bracket that closes the one at `at`; an apostrophe guards the next character. */
function bracketEnd(formula: string, at: number): number {
  let depth = 0;
  for (; at < formula.length; at++) {
    const c = formula[at];
    if (c === "'") at++;
    else if (c === '[') depth++;
    else if (c === ']' && --depth === 0) return at + 1;
  }
  return at;
}

/** `Q1:Q4!A1`: what looks like a cell is the first of several sheets. */
function isSheetRange(formula: string, at: number): boolean {
  while (at < formula.length && isWord(formula.charCodeAt(at))) at++;
  return formula.charCodeAt(at) === BANG;
}

/** The cell `$A$1` as distances in a form that no formula's text can have; undefined where the word is no cell. */
function relative(text: string, start: number, end: number, row: number, column: number): string | undefined {
  let at = start;
  const absoluteColumn = text.charCodeAt(at) === DOLLAR;
  if (absoluteColumn) at++;
  let c = 0;
  const letters = at;
  for (; at < end && at - letters < 4 && isLetter(text.charCodeAt(at)); at++) {
    c = c * 26 + (text.charCodeAt(at) & 31);
  }
  if (at === letters || at - letters > 3 || c > MAX_COLUMNS) return undefined;
  const absoluteRow = text.charCodeAt(at) === DOLLAR;
  if (absoluteRow) at++;
  const digits = at;
  let r = 0;
  for (; at < end && isDigit(text.charCodeAt(at)); at++) r = r * 10 + text.charCodeAt(at) - 48;
  if (at !== end || at === digits || at - digits > 7 || r === 0 || r > MAX_ROWS) return undefined;
  return `\u0001${absoluteRow ? `$${r}` : r - 1 - row},${absoluteColumn ? `$${c}` : c - 1 - column}\u0001`;
}

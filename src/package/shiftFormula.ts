/** A formula as it reads some cells further on: relative references move along, absolute ones stay. */
import { isCall, tokenize } from '../cells/formulaTokens';
import type { Token } from '../cells/formulaTokens';
import { MAX_COLUMNS, MAX_ROWS, columnLetters } from '../cells/address';

export function shiftFormula(formula: string, rows: number, columns: number): string {
  if (rows === 0 && columns === 0) return formula;
  const tokens = tokenize(formula);
  return tokens
    .map((token, at) => (isSheetOrCall(tokens, at) ? token.text : shiftToken(tokens, at, rows, columns)))
    .join('');
}

/** `LOG10(`, `Q1!A1`, `Q1:Q3!A1` and `Tbl1[…]` look like cells and are none. */
function isSheetOrCall(tokens: readonly Token[], at: number): boolean {
  const next = tokens[at + 1];
  if (isCall(tokens, at) || next?.text === '!' || next?.kind === 'bracket') return true;
  return next?.text === ':' && tokens[at + 3]?.text === '!' && tokens[at - 1]?.text !== '!';
}

function shiftToken(tokens: readonly Token[], at: number, rows: number, columns: number): string {
  const { kind, text } = tokens[at] ?? { kind: 'space', text: '' };
  if (kind !== 'name' && kind !== 'number') return text;
  const cell = /^(\$?)([A-Z]{1,3})(\$?)(\d{1,7})$/i.exec(text);
  if (cell !== null) {
    const [, fixedColumn = '', letters = '', fixedRow = '', digits = ''] = cell;
    return `${fixedColumn}${shiftColumn(letters, fixedColumn, columns)}${fixedRow}${shiftRow(digits, fixedRow, rows)}`;
  }
  const isEdge = tokens[at - 1]?.text === ':' || tokens[at + 1]?.text === ':';
  const column = /^(\$?)([A-Z]{1,3})$/i.exec(text);
  if (isEdge && column !== null)
    return `${column[1] ?? ''}${shiftColumn(column[2] ?? '', column[1] ?? '', columns)}`;
  const row = /^(\$?)(\d{1,7})$/.exec(text);
  if (isEdge && row !== null) return `${row[1] ?? ''}${shiftRow(row[2] ?? '', row[1] ?? '', rows)}`;
  return text;
}

/** What leaves the sheet at one edge comes back at the other, as spreadsheets do. */
const wrap = (value: number, size: number) => ((value % size) + size) % size;

function shiftRow(digits: string, fixed: string, by: number): string {
  return fixed === '$' ? digits : String(wrap(Number(digits) - 1 + by, MAX_ROWS) + 1);
}

function shiftColumn(letters: string, fixed: string, by: number): string {
  if (fixed === '$') return letters;
  let column = 0;
  for (const letter of letters.toUpperCase()) column = column * 26 + letter.charCodeAt(0) - 64;
  return columnLetters(wrap(column - 1 + by, MAX_COLUMNS));
}

import { findDefinition } from '../call/findDefinition';
import { parseCell } from '../cells/address';
import { NAMESPACE } from '../cells/namespace';
import { inputsOf, takesRange } from '../core/define';
import { isCall, tokenize, type Token } from '../cells/formulaTokens';
import { RANGE_READERS } from '../package/futureFunctions';
import { constantText, isThisRow, type Place, type Reference, type References } from '../workbook/references';

/**
 * One formula of a spilling one: what it says for a single cell of its area. Ranges and arrays that go along with the area are cut
 * to the cell in line with it, as the worksheet itself does; ranges that a function reads whole stay.
 * Undefined where no range goes along, so that the cells have no formula of their own.
 */
export function sliced(
  formula: string,
  place: Place,
  references: References,
  cell: { readonly down: number; readonly right: number },
): string | undefined {
  const cut: string[] = [];
  const text = eachReference(formula, (own, readsWhole) => {
    const found = readsWhole ? undefined : references.read(own, place, false);
    const piece = found && lineOf(found, cell);
    if (piece !== undefined) cut.push(piece);
    return piece;
  });
  return cut.length > 0 ? text : undefined;
}

/** Goes through the references of a formula, told of each whether a function reads it whole; what is given takes its place. */
function eachReference(
  formula: string,
  put: (text: string, readsWhole: boolean) => string | undefined,
): string {
  const tokens = tokenize(formula);
  const out: string[] = [];
  const readers: boolean[] = [];
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at] as Token;
    const readsWhole = readers.at(-1) === true;
    const end = referenceEnd(tokens, at);
    if (end > at) {
      const text = joined(tokens.slice(at, end));
      out.push(put(text, readsWhole) ?? text);
      at = end - 1;
      continue;
    }
    if (token.kind === 'open') readers.push(readsWhole || opensReader(tokens, at));
    else if (token.kind === 'close') readers.pop();
    out.push(token.text);
  }
  return out.join('');
}

/** Whether a formula would read other cells, or ask where it stands, in another place. */
export function goesAlong(formula: string): boolean {
  const tokens = tokenize(formula);
  return tokens.some((token, at) => {
    const { kind, text } = token;
    if (isThisRow(token)) return true;
    if (kind !== 'name' && kind !== 'number') return false;
    if (isCall(tokens, at)) return /^(?:ROW|COLUMN)$/i.test(text) && tokens[at + 2]?.kind === 'close';
    if (tokens[at + 1]?.text === '!') return false;
    if (parseCell(text)) return (text.match(/\$/g)?.length ?? 0) < 2;
    // Whole rows and columns.
    const isEnd = tokens[at - 1]?.text === ':' || tokens[at + 1]?.text === ':';
    return isEnd && /^(?:[A-Z]{1,3}|\d+)$/i.test(text);
  });
}

/** The cells of tables that a formula names by its own row; `far`: their texts name their sheets. */
export function cellsOfThisRow(
  formula: string,
  place: Place,
  references: References,
  far: boolean,
): string[] {
  const found: string[] = [];
  eachReference(formula, (text) => {
    const cell = tokenize(text).some(isThisRow) ? references.read(text, place, far)?.text : undefined;
    if (cell !== undefined) found.push(cell);
    return undefined;
  });
  return found;
}

/** A cell that a range has in a place of its own, for one cell of those that a formula fills. */
export interface InLine {
  readonly range: string;
  readonly rows: number;
  readonly columns: number;
  /** Counted from 1. */
  readonly row: number;
  readonly column: number;
  readonly cell: string;
}

/** The ranges that go along with the area that a formula fills, for one cell of it; `far`: their texts name their sheets. */
export function linesOf(
  formula: string,
  place: Place,
  references: References,
  cell: { readonly down: number; readonly right: number },
  far: boolean,
): InLine[] {
  const found: InLine[] = [];
  eachReference(formula, (text, readsWhole) => {
    const range = readsWhole ? undefined : references.read(text, place, far);
    const rows = range?.cells.length ?? 0;
    const columns = range?.cells[0]?.length ?? 0;
    if (!range?.varies || rows * columns <= 1) return undefined;
    const [row, column] = [rows === 1 ? 0 : cell.down, columns === 1 ? 0 : cell.right];
    const own = range.cells[row]?.[column];
    if (own)
      found.push({ range: range.text, rows, columns, row: row + 1, column: column + 1, cell: own.text });
    return undefined;
  });
  return found;
}

const joined = (tokens: readonly Token[]): string => tokens.map(({ text }) => text).join('');

/** The cell of a range in line with one of the area; undefined for a single cell, which needs no cutting. */
function lineOf({ cells }: Reference, { down, right }: { down: number; right: number }): string | undefined {
  const columns = cells[0]?.length ?? 0;
  if (cells.length === 1 && columns === 1) return undefined;
  const cell = cells[cells.length === 1 ? 0 : down]?.[columns === 1 ? 0 : right];
  // An entry of an array that is written out has no cell of its own.
  return cell?.text === '' ? constantText(cell.value) : cell?.text;
}

/** Does this bracket belong to a function that reads ranges whole? */
function opensReader(tokens: readonly Token[], open: number): boolean {
  if (!isCall(tokens, open - 1)) return false;
  const name = tokens[open - 1]?.text.toUpperCase() ?? '';
  if (!name.startsWith(`${NAMESPACE}.`)) return RANGE_READERS.has(name);
  const id = name.slice(NAMESPACE.length + 1);
  try {
    return inputsOf(findDefinition(id)).some(({ reading }) => takesRange(reading));
  } catch {
    // The functions about functions read whole ranges, but for the one that converts units.
    return id !== 'UNIT.CONVERT';
  }
}

/** Where a reference that begins at a token ends; the token's own place where none begins. */
function referenceEnd(tokens: readonly Token[], at: number): number {
  const text = (i: number): string => tokens[i]?.text ?? '';
  const isAnchor = text(at).toUpperCase() === 'ANCHORARRAY' && text(at + 1) === '(';
  if (isAnchor) {
    let end = at + 2;
    while (end < tokens.length && text(end) !== ')') end++;
    return end + 1;
  }
  if (text(at) === '{') return tokens.findIndex((token, i) => i > at && token.text === '}') + 1 || at;
  const first = tokens[at];
  if (first?.kind !== 'name' && first?.kind !== 'quoted') return at;
  if (text(at - 1) === '!' || text(at - 1) === ':' || isCall(tokens, at)) return at;
  let end = text(at + 1) === '!' ? at + 3 : at + 1;
  if (text(end) === ':') end += 2;
  else if (tokens[end]?.kind === 'bracket') end += 1;
  return end;
}

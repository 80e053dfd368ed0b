import { findDefinition } from '../call/findDefinition';
import { cellAddress, quotedSheet } from '../cells/address';
import { NAMESPACE } from '../cells/namespace';
import { inputsOf, takesRange } from '../core/define';
import { isCall, tokenize, type Token } from '../cells/formulaTokens';
import { RANGE_READERS } from '../package/futureFunctions';
import { constantText, type Place, type Reference, type References } from '../workbook/references';

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
  const tokens = tokenize(formula);
  const out: string[] = [];
  const readers: boolean[] = [];
  let cut = false;
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at] as Token;
    const readsWhole = readers.at(-1) === true;
    const end = readsWhole ? at : referenceEnd(tokens, at);
    if (end > at) {
      const text = joined(tokens.slice(at, end));
      const found = references.read(text, place, false);
      const piece = found && lineOf(found, cell);
      if (piece !== undefined) {
        cut = true;
        out.push(piece);
      } else out.push(text);
      at = end - 1;
      continue;
    }
    if (token.kind === 'open') readers.push(readsWhole || opensReader(tokens, at));
    else if (token.kind === 'close') readers.pop();
    out.push(token.text);
  }
  return cut ? out.join('') : undefined;
}

/** A cell in a row that the formula reads by its place beside it, with the sheet’s name; undefined where it reads none. */
export function cellBeside(
  formula: string,
  place: Place,
  row: number,
  references: References,
): string | undefined {
  const tokens = tokenize(formula);
  for (let at = 0; at < tokens.length; at++) {
    const end = referenceEnd(tokens, at);
    if (end <= at) continue;
    const text = joined(tokens.slice(at, end));
    const found = references.areaOf(text, place);
    // A dollar sign before the row, or a name: it stays where it is when rows are sorted.
    const isBeside = /\[|(?:^|[!:]|[A-Z])\d+$/i.test(text);
    const area = found?.sheet.name === place.sheet.name ? found.area : undefined;
    if (area && isBeside && area.top <= row && row <= area.bottom)
      return `${quotedSheet(place.sheet.name)}!${cellAddress(row, area.left)}`;
    at = end - 1;
  }
  return undefined;
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

/** The references of a formula's text, rewritten; all else keeps every character. */
import {
  areaAddress,
  columnLetters,
  MAX_COLUMNS,
  MAX_ROWS,
  parseCell,
  quotedSheet,
  type Area,
} from '../../cells/address';
import { isCall, tokenize, type Token } from '../../cells/formulaTokens';
import type { Placed } from './mapping';

export interface Rewriting {
  /** The sheet that the formula stands on, before and after. */
  readonly from: string;
  readonly to: string;
  area(sheet: string, area: Area): Placed | undefined;
  /** Sheets from the first to the last, `Jan:Mar!A1`; undefined where none is left. Left alone unless told. */
  span?(first: string, last: string): readonly [string, string] | undefined;
  /** Another name for a table or a defined name. */
  word?(text: string): string;
  /** What becomes of a bracket that names columns of a table; undefined where they are gone. */
  columns?(table: string, bracket: string): string | undefined;
}

const GONE = '#REF!';

/** One end of a reference as it is written. */
interface End {
  readonly row?: number;
  readonly column?: number;
  readonly fixedRow: boolean;
  readonly fixedColumn: boolean;
}

function readEnd(token: Token | undefined): End | undefined {
  if (token?.kind !== 'name' && token?.kind !== 'number') return undefined;
  const found = /^(\$?)([A-Z]{1,3})?(\$?)(\d{1,7})?$/i.exec(token.text);
  if (!found) return undefined;
  const [, first = '', letters, second = '', digits] = found;
  if (letters === undefined && digits === undefined) return undefined;
  if (letters !== undefined && digits === undefined && second !== '') return undefined;
  const cell = parseCell(`${letters ?? 'A'}${digits ?? '1'}`);
  if (!cell) return undefined;
  return {
    ...(digits === undefined ? {} : { row: cell.row }),
    ...(letters === undefined ? {} : { column: cell.column }),
    fixedColumn: letters !== undefined && first === '$',
    fixedRow: letters === undefined ? (first || second) === '$' : second === '$',
  };
}

const sameForm = (a: End, b: End): boolean =>
  (a.row === undefined) === (b.row === undefined) && (a.column === undefined) === (b.column === undefined);

interface Reference {
  readonly area: Area;
  readonly ends: readonly End[];
  /** The token behind it. */
  readonly next: number;
}

/** The reference that begins at a token. A lone column or row is none. */
function readReference(tokens: readonly Token[], at: number): Reference | undefined {
  if (isCall(tokens, at)) return undefined;
  const one = readEnd(tokens[at]);
  if (!one) return undefined;
  const other = tokens[at + 1]?.text === ':' && !isCall(tokens, at + 2) ? readEnd(tokens[at + 2]) : undefined;
  const ends = other && sameForm(one, other) ? [one, other] : [one];
  if (ends.length === 1 && (one.row === undefined || one.column === undefined)) return undefined;
  const next = at + (ends.length === 2 ? 3 : 1);
  const following = tokens[next];
  if (following?.text === '!' || following?.kind === 'bracket') return undefined;
  const rows = ends.map(({ row }) => row).filter((row) => row !== undefined);
  const columns = ends.map(({ column }) => column).filter((column) => column !== undefined);
  return {
    area: {
      top: rows.length > 0 ? Math.min(...rows) : 0,
      bottom: rows.length > 0 ? Math.max(...rows) : MAX_ROWS - 1,
      left: columns.length > 0 ? Math.min(...columns) : 0,
      right: columns.length > 0 ? Math.max(...columns) : MAX_COLUMNS - 1,
    },
    ends,
    next,
  };
}

function writeReference({ ends }: Reference, area: Area): string {
  const [one, other = one] = ends;
  if (!one || !other) return GONE;
  const edge = (end: End, row: number, column: number): string =>
    (end.column === undefined ? '' : `${end.fixedColumn ? '$' : ''}${columnLetters(column)}`) +
    (end.row === undefined ? '' : `${end.fixedRow ? '$' : ''}${row + 1}`);
  // Corners may have been written in any order; the marks of fixed ends stay with their places.
  const upFirst = (one.row ?? 0) <= (other.row ?? 0);
  const leftFirst = (one.column ?? 0) <= (other.column ?? 0);
  const first = edge(one, upFirst ? area.top : area.bottom, leftFirst ? area.left : area.right);
  if (ends.length === 1 && area.top === area.bottom && area.left === area.right) return first;
  if (ends.length === 1) return areaAddress(area);
  return `${first}:${edge(other, upFirst ? area.bottom : area.top, leftFirst ? area.right : area.left)}`;
}

const unquoted = (text: string): string =>
  text.startsWith("'") ? text.slice(1, -1).replaceAll("''", "'") : text;

interface Prefix {
  readonly first: string;
  /** Behind the colon of `Jan:Mar!`. */
  readonly last?: string;
  /** The token behind the exclamation mark. */
  readonly next: number;
}

/** A sheet before a reference: `Sheet!`, `'My sheet'!`, `Jan:Mar!`, `'Jan:Mar'!`. */
function readPrefix(tokens: readonly Token[], at: number): Prefix | undefined {
  const isSheet = (token: Token | undefined): boolean =>
    token?.kind === 'name' || token?.kind === 'quoted' || token?.kind === 'number';
  if (!isSheet(tokens[at]) || isCall(tokens, at)) return undefined;
  // `2a!A1` is cut in two: sheets whose names begin with digits are quoted by every program that writes files.
  const name = unquoted(tokens[at]?.text ?? '');
  if (tokens[at + 1]?.text === '!') {
    const [first = '', last] = name.split(':');
    return { first, ...(last === undefined ? {} : { last }), next: at + 2 };
  }
  if (tokens[at + 1]?.text === ':' && isSheet(tokens[at + 2]) && tokens[at + 3]?.text === '!')
    return { first: name, last: unquoted(tokens[at + 2]?.text ?? ''), next: at + 4 };
  return undefined;
}

export function rewriteFormula(text: string, how: Rewriting): string {
  const tokens = tokenize(text);
  let out = '';
  let at = 0;
  const copy = (to: number): void => {
    for (; at < to; at++) out += tokens[at]?.text ?? '';
  };
  while (at < tokens.length) {
    const token = tokens[at];
    // Another workbook: nothing of it moves.
    if (token?.kind === 'bracket' || (token?.kind === 'quoted' && token.text.includes('['))) {
      const foreign = tokens[at + 1]?.text === '!' ? at : readPrefix(tokens, at + 1) ? at + 1 : undefined;
      const end = foreign === undefined ? at + 1 : (readPrefix(tokens, foreign)?.next ?? at + 1);
      copy(readReference(tokens, end)?.next ?? end);
      continue;
    }
    const prefix = readPrefix(tokens, at);
    const reference = readReference(tokens, prefix?.next ?? at);
    if (prefix?.last !== undefined) {
      const span = how.span ? how.span(prefix.first, prefix.last) : ([prefix.first, prefix.last] as const);
      if (span) {
        const [first, last] = span;
        const same = first === prefix.first && last === prefix.last;
        out += same
          ? tokens
              .slice(at, prefix.next)
              .map((one) => one.text)
              .join('')
          : quotedSpan(first, last);
        at = prefix.next;
        copy(reference?.next ?? at);
      } else {
        out += GONE;
        at = reference?.next ?? prefix.next;
      }
    } else if (reference) {
      const sheet = prefix?.first ?? how.from;
      const placed = how.area(sheet, reference.area);
      if (!placed) out += GONE;
      else {
        const same = placed.sheet === sheet;
        if (prefix && same)
          out += tokens
            .slice(at, prefix.next)
            .map((one) => one.text)
            .join('');
        else if (prefix || placed.sheet !== how.to) out += `${quotedSheet(placed.sheet)}!`;
        out += writeReference(reference, placed);
      }
      at = reference.next;
    } else if (prefix) {
      // A name that belongs to a sheet.
      const corner = { top: 0, left: 0, bottom: MAX_ROWS - 1, right: MAX_COLUMNS - 1 };
      const placed = how.area(prefix.first, corner);
      if (placed) {
        out +=
          placed.sheet === prefix.first
            ? tokens
                .slice(at, prefix.next)
                .map((one) => one.text)
                .join('')
            : `${quotedSheet(placed.sheet)}!`;
        at = prefix.next;
        copy(at + 1);
      } else {
        out += GONE;
        at = prefix.next + 1;
      }
    } else if (token?.kind === 'name' && !isCall(tokens, at)) {
      const next = tokens[at + 1];
      const bracket = next?.kind === 'bracket' ? next.text : undefined;
      const columns = bracket === undefined || !how.columns ? bracket : how.columns(token.text, bracket);
      if (bracket !== undefined && columns === undefined) out += GONE;
      else out += (how.word?.(token.text) ?? token.text) + (columns ?? '');
      at += bracket === undefined ? 1 : 2;
    } else copy(at + 1);
  }
  return out;
}

function quotedSpan(first: string, last: string): string {
  if (first === last) return `${quotedSheet(first)}!`;
  const plain = [first, last].every((name) => quotedSheet(name) === name);
  return plain ? `${first}:${last}!` : `'${`${first}:${last}`.replaceAll("'", "''")}'!`;
}

import { CellError, type Argument, type CellValue, type Matrix } from '../cells/value';
import type { WorksheetFunction } from '../call/worksheetFunction';
import { isCall, type Token } from '../cells/formulaTokens';
import { cellAddress, parseArea, parseCell, type Area } from '../cells/address';
import type { Range } from '../workbook/cells';
import { callAt, textOf } from './calls';

/** Where an argument's value came from. */
export type Origin =
  | { readonly from: 'nothing' }
  | { readonly from: 'constant' }
  /** `sheet` is absent for cells of the formula's own sheet. */
  | { readonly from: 'cells'; readonly area: Area; readonly sheet?: string }
  | { readonly from: 'expression'; readonly text: string };

export interface GivenArgument {
  readonly value: Argument;
  readonly origin: Origin;
}

/** What is needed to work out arguments as the worksheet does. */
export interface Surroundings {
  /** The sheet that the formula stands on. */
  readonly sheet: string;
  readonly read: (range: Range) => Promise<CellValue[][]>;
  readonly functions: readonly WorksheetFunction[];
}

/** Works out one argument of a call. */
export async function readGiven(tokens: readonly Token[], around: Surroundings): Promise<GivenArgument> {
  if (tokens.length === 0) return { value: undefined, origin: { from: 'nothing' } };
  const constant = constantOf(tokens);
  if (constant) return { value: constant, origin: { from: 'constant' } };
  const found = referenceAt(tokens, 0);
  if (found?.end === tokens.length - 1) {
    const { area, sheet } = found;
    return {
      value: await readArea(found, around),
      origin: {
        from: 'cells',
        area,
        ...(sheet === undefined || sameSheet(sheet, around.sheet) ? {} : { sheet }),
      },
    };
  }
  return { value: await calculate(tokens, around), origin: { from: 'expression', text: textOf(tokens) } };
}

const sameSheet = (a: string, b: string): boolean => a.toLowerCase() === b.toLowerCase();

/** A number, text, TRUE or FALSE, or a constant array in braces. */
function constantOf(tokens: readonly Token[]): Matrix | undefined {
  if (tokens[0]?.text === '{' && tokens.at(-1)?.text === '}') return arrayOf(tokens.slice(1, -1));
  const value = scalarOf(tokens);
  return value === undefined ? undefined : [[value]];
}

function arrayOf(tokens: readonly Token[]): Matrix | undefined {
  const rows: CellValue[][] = [[]];
  let part: Token[] = [];
  const close = (): boolean => {
    const value = scalarOf(part);
    part = [];
    if (value === undefined) return false;
    rows.at(-1)?.push(value);
    return true;
  };
  for (const token of tokens) {
    if (token.kind !== 'comma') part.push(token);
    else if (!close()) return undefined;
    else if (token.text === ';') rows.push([]);
  }
  return close() ? rows : undefined;
}

function scalarOf(tokens: readonly Token[]): CellValue | undefined {
  const parts = tokens.filter(({ kind }) => kind !== 'space');
  const sign = parts[0]?.text === '-' ? -1 : 1;
  const rest = parts[0]?.text === '-' || parts[0]?.text === '+' ? parts.slice(1) : parts;
  const [first, second] = rest;
  if (first?.kind === 'number') {
    if (rest.length === 1) return sign * Number(first.text);
    return rest.length === 2 && second?.text === '%' ? (sign * Number(first.text)) / 100 : undefined;
  }
  if (!first || parts.length !== 1) return undefined;
  if (first.kind === 'string') return first.text.slice(1, -1).replaceAll('""', '"');
  if (/^(true|false)$/i.test(first.text)) return /^true$/i.test(first.text);
  return undefined;
}

interface Reference {
  readonly area: Area;
  readonly sheet?: string;
  /** Its last token. */
  readonly end: number;
}

/** The cells that are named from this token on. */
function referenceAt(tokens: readonly Token[], at: number): Reference | undefined {
  const hasSheet = tokens[at + 1]?.text === '!';
  const start = hasSheet ? at + 2 : at;
  const cell = (index: number): string | undefined => {
    const token = tokens[index];
    return token?.kind === 'name' && parseCell(token.text) && !isCall(tokens, index) ? token.text : undefined;
  };
  const first = cell(start);
  if (first === undefined) return undefined;
  const last = tokens[start + 1]?.text === ':' ? cell(start + 2) : undefined;
  const area = parseArea(last === undefined ? first : `${first}:${last}`);
  const end = last === undefined ? start : start + 2;
  // How far a spill reaches is not known here.
  if (!area || tokens[end + 1]?.text === '#') return undefined;
  return { area, end, ...(hasSheet ? { sheet: unquoted(tokens[at] as Token) } : {}) };
}

/** The cells that an argument is, where it is nothing else. */
export function cellsOf(
  argument: readonly Token[],
): { readonly area: Area; readonly sheet?: string } | undefined {
  const found = referenceAt(argument, 0);
  return found?.end === argument.length - 1 ? found : undefined;
}

const unquoted = ({ kind, text }: Token): string =>
  kind === 'quoted' ? text.slice(1, -1).replaceAll("''", "'") : text;

const readArea = ({ area, sheet }: Reference, around: Surroundings): Promise<CellValue[][]> =>
  around.read({
    sheet: sheet ?? around.sheet,
    row: area.top,
    column: area.left,
    rows: area.bottom - area.top + 1,
    columns: area.right - area.left + 1,
  });

/** Anything else: one of our calls by itself, all the rest by the engine, its cells put in as constants. */
async function calculate(tokens: readonly Token[], around: Surroundings): Promise<Matrix> {
  const call = callAt(tokens, 0);
  const fn = call && around.functions.find(({ id }) => id === call.id);
  if (call && fn && call.end === tokens.length - 1) {
    const args = await Promise.all(call.args.map((arg) => readGiven(arg, around)));
    return fn.call(args.map(({ value }) => value));
  }
  const parts: string[] = [];
  for (let at = 0; at < tokens.length; at++) {
    const reference = referenceAt(tokens, at);
    if (reference) {
      const cells = await readArea(reference, around);
      const error = cells.flat().find((cell) => cell instanceof CellError);
      if (error) return [[error]];
      parts.push(literal(cells));
      at = reference.end;
    } else parts.push((tokens[at] as Token).text);
  }
  // The engine is large, and few formulas need it here.
  const { calculateFormulas } = await import('../workbook/calculateFormulas');
  const [result = [[null]]] = await calculateFormulas([parts.join('')], around.functions);
  return result;
}

function literal(cells: Matrix): string {
  const text = (cell: CellValue): string => {
    if (typeof cell === 'string') return `"${cell.replaceAll('"', '""')}"`;
    // A blank cell counts as 0 in a calculation.
    return cell === null ? '0' : String(cell).toUpperCase();
  };
  const [[only = null] = []] = cells;
  if (cells.length === 1 && cells[0]?.length === 1)
    return typeof only === 'number' && only < 0 ? `(${text(only)})` : text(only);
  return `{${cells.map((row) => row.map(text).join(',')).join(';')}}`;
}

/** `D28`, `Insert!D28`: the cell of an area that counts at a place of the common shape. */
export function originAddress(
  { area, sheet }: Extract<Origin, { from: 'cells' }>,
  row: number,
  column: number,
): string {
  const within = (offset: number, from: number, to: number): number => (from === to ? from : from + offset);
  const address = cellAddress(within(row, area.top, area.bottom), within(column, area.left, area.right));
  if (sheet === undefined) return address;
  return /^[\p{L}_][\p{L}\p{N}_]*$/u.test(sheet)
    ? `${sheet}!${address}`
    : `'${sheet.replaceAll("'", "''")}'!${address}`;
}

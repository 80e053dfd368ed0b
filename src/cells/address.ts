/** Where a cell lies: rows and columns count from zero; people write A1. */

/** A rectangle of cells; all four edges belong to it. */
export interface Area {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

/** The limits of the format. */
export const MAX_ROWS = 1_048_576;
export const MAX_COLUMNS = 16_384;

/** 0 → A, 25 → Z, 26 → AA. */
export function columnLetters(column: number): string {
  let letters = '';
  for (let n = column + 1; n > 0; n = Math.floor((n - 1) / 26)) {
    letters = String.fromCharCode(65 + ((n - 1) % 26)) + letters;
  }
  return letters;
}

/** (0, 0) → A1. */
export function cellAddress(row: number, column: number): string {
  return `${columnLetters(column)}${row + 1}`;
}

/** A1:B2, or A1 for a single cell. */
export function areaAddress(area: Area): string {
  const first = cellAddress(area.top, area.left);
  const last = cellAddress(area.bottom, area.right);
  return first === last ? first : `${first}:${last}`;
}

/** Reads A1 or $A$1; undefined where the text is no cell of a sheet. */
export function parseCell(address: string): { row: number; column: number } | undefined {
  const found = /^\$?([A-Z]{1,3})\$?([1-9]\d{0,6})$/i.exec(address);
  if (found?.[1] === undefined || found[2] === undefined) return undefined;
  let column = 0;
  for (const letter of found[1].toUpperCase()) column = column * 26 + letter.charCodeAt(0) - 64;
  const row = Number(found[2]);
  return row > MAX_ROWS || column > MAX_COLUMNS ? undefined : { row: row - 1, column: column - 1 };
}

/** Reads A1 or A1:B2, corners in any order; undefined where the text is no area of a sheet. */
export function parseArea(address: string): Area | undefined {
  const [from = '', to = from, ...rest] = address.split(':');
  const a = parseCell(from);
  const b = parseCell(to);
  if (a === undefined || b === undefined || rest.length > 0) return undefined;
  return {
    top: Math.min(a.row, b.row),
    left: Math.min(a.column, b.column),
    bottom: Math.max(a.row, b.row),
    right: Math.max(a.column, b.column),
  };
}

export function areaContains(area: Area, row: number, column: number): boolean {
  return row >= area.top && row <= area.bottom && column >= area.left && column <= area.right;
}

/** The area of one cell. */
export const cellArea = (row: number, column: number): Area => ({
  top: row,
  left: column,
  bottom: row,
  right: column,
});

export const areasOverlap = (a: Area, b: Area): boolean =>
  a.top <= b.bottom && b.top <= a.bottom && a.left <= b.right && b.left <= a.right;

/** A sheet's name as formulas write it. */
export function quotedSheet(name: string): string {
  const plain =
    /^[\p{L}_][\p{L}\p{N}_.]*$/u.test(name) &&
    !parseCell(name) &&
    !/^(?:R|C|RC|R\d+C\d*|C\d+|TRUE|FALSE)$/i.test(name);
  return plain ? name : `'${name.replaceAll("'", "''")}'`;
}

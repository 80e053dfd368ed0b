import { cellAddress, columnLetters, MAX_COLUMNS, MAX_ROWS } from '../../cells/address';
import { CellError } from '../../cells/value';
import { toNumber } from '../coerce';
import { ArrayValue, Keep, raise, Reference, type SheetArea, type Value } from '../values';
import { inContext, plain, volatile, type Context } from './spec';

/** A part of a reference stays a reference, so that `INDEX(…):B3` and `SUM(INDEX(…))` read cells. */
export const INDEX = inContext('INDEX', 'Ann?n?', (context, from, row, column, area = 1): Value => {
  if (!(from instanceof Reference)) return partOfArray(context.array(from), row, column);
  const cells = from.areas[Math.trunc(area) - 1] ?? raise('#REF!');
  const part = choose(cells.bottom - cells.top + 1, cells.right - cells.left + 1, row, column);
  const top = cells.top + part.top;
  const left = cells.left + part.left;
  return new Reference([
    { sheet: cells.sheet, top, left, bottom: top + part.rows - 1, right: left + part.columns - 1 },
  ]);
});

function partOfArray(array: ArrayValue, row: number, column: number | undefined): Value {
  const part = choose(array.rows, array.columns, row, column);
  if (part.rows === 1 && part.columns === 1) return array.at(part.top, part.left);
  return ArrayValue.build(part.rows, part.columns, (r, c) => array.at(part.top + r, part.left + c));
}

/** Row or column 0 is all of them; a single row takes its one index as the column. */
function choose(rows: number, columns: number, row: number, column: number | undefined) {
  const isLine = column === undefined && rows === 1;
  const r = Math.trunc(isLine ? 0 : row);
  const c = Math.trunc(isLine ? row : (column ?? (columns === 1 ? 1 : 0)));
  if (r < 0 || c < 0) return raise('#VALUE!');
  if (r > rows || c > columns) return raise('#REF!');
  return {
    top: r === 0 ? 0 : r - 1,
    left: c === 0 ? 0 : c - 1,
    rows: r === 0 ? rows : 1,
    columns: c === 0 ? columns : 1,
  };
}

/** The first area of a reference; an error where it is none. */
function areaOf(value: Value): SheetArea {
  if (value instanceof CellError) return raise(value);
  return (value instanceof Reference ? value.areas[0] : undefined) ?? raise('#VALUE!');
}

const own = (context: Context): Reference => Reference.cell(context.sheet, context.row, context.column);

/** One number for each row or column of a range, or for the cell of the formula. */
const numbered = (name: string, of: (area: SheetArea) => { first: number; count: number; isRow: boolean }) =>
  inContext(name, 'p?', (context, value) => {
    const { first, count, isRow } = of(areaOf(value ?? own(context)));
    if (count === 1) return first + 1;
    return isRow
      ? ArrayValue.build(count, 1, (row) => first + row + 1)
      : ArrayValue.build(1, count, (_, column) => first + column + 1);
  });

const shapeOf = (context: Context, value: Value): { rows: number; columns: number } => {
  if (value instanceof CellError) return raise(value);
  if (!(value instanceof Reference)) return context.array(value);
  const { top, bottom, left, right } = areaOf(value);
  return { rows: bottom - top + 1, columns: right - left + 1 };
};

function moved(area: SheetArea, rows: number, columns: number, height: number, width: number): Value {
  const firstRow = area.top + rows;
  const firstColumn = area.left + columns;
  const lastRow = firstRow + height - Math.sign(height);
  const lastColumn = firstColumn + width - Math.sign(width);
  if (height === 0 || width === 0) return raise('#REF!');
  const top = Math.min(firstRow, lastRow);
  const left = Math.min(firstColumn, lastColumn);
  const bottom = Math.max(firstRow, lastRow);
  const right = Math.max(firstColumn, lastColumn);
  if (top < 0 || left < 0 || bottom >= MAX_ROWS || right >= MAX_COLUMNS) return raise('#REF!');
  return new Reference([{ sheet: area.sheet, top, left, bottom, right }]);
}

const R1C1 = /^R(?:(\d+)|\[(-?\d+)\])?C(?:(\d+)|\[(-?\d+)\])?$/i;

/** `R1C[-2]` as `A1` writes it. */
function fromR1C1(text: string, { row, column }: Context): string {
  const bang = text.lastIndexOf('!');
  const cells = text
    .slice(bang + 1)
    .split(':')
    .map((part) => {
      const [, atRow, byRow, atColumn, byColumn] = R1C1.exec(part) ?? raise('#REF!');
      const r = atRow === undefined ? row + Number(byRow ?? 0) : Number(atRow) - 1;
      const c = atColumn === undefined ? column + Number(byColumn ?? 0) : Number(atColumn) - 1;
      return r < 0 || c < 0 || r >= MAX_ROWS || c >= MAX_COLUMNS ? raise('#REF!') : cellAddress(r, c);
    });
  return text.slice(0, bang + 1) + cells.join(':');
}

/** CELL knows what the calculation knows: nothing of widths, colours and formats. */
function cellInfo(context: Context, what: string, area: SheetArea): Value {
  const value = () => context.array(Reference.cell(area.sheet, area.top, area.left)).at(0, 0);
  switch (what.toLowerCase()) {
    case 'address': {
      const address = `$${columnLetters(area.left)}$${area.top + 1}`;
      const sheet = context.workbook.sheetNames[area.sheet] ?? '';
      return area.sheet === context.sheet ? address : `${sheetPrefix(sheet)}${address}`;
    }
    case 'row':
      return area.top + 1;
    case 'col':
      return area.left + 1;
    case 'contents':
      return value() ?? 0;
    case 'type': {
      const found = value();
      return found === null ? 'b' : typeof found === 'string' ? 'l' : 'v';
    }
    default:
      throw new Keep(`CELL does not know "${what}" here.`);
  }
}

const sheetPrefix = (name: string): string =>
  /^[\p{L}_][\p{L}\p{N}_.]*$/u.test(name) ? `${name}!` : `'${name.replaceAll("'", "''")}'!`;

/** Functions of places. OFFSET and INDIRECT say only when they run what they read. */
export const references = [
  INDEX,
  numbered('ROW', ({ top, bottom }) => ({ first: top, count: bottom - top + 1, isRow: true })),
  numbered('COLUMN', ({ left, right }) => ({ first: left, count: right - left + 1, isRow: false })),
  inContext('ROWS', 'p', (context, value) => shapeOf(context, value).rows),
  inContext('COLUMNS', 'p', (context, value) => shapeOf(context, value).columns),
  plain('AREAS', 'p', (value) =>
    value instanceof Reference ? value.areas.length : raise(value instanceof CellError ? value : '#VALUE!'),
  ),
  plain('ISREF', 'p', (value) => value instanceof Reference),
  volatile(
    inContext('OFFSET', 'pnns?s?', (context, from, rows, columns, height, width) => {
      const area = areaOf(from);
      const size = shapeOf(context, from);
      return moved(
        area,
        Math.trunc(rows),
        Math.trunc(columns),
        Math.trunc(toNumber(height ?? size.rows)),
        Math.trunc(toNumber(width ?? size.columns)),
      );
    }),
  ),
  volatile(
    inContext('INDIRECT', 'tb?', (context, text, isA1 = true) => {
      const { sheet, row, column, workbook } = context;
      const trimmed = text.trim();
      return workbook.refer(isA1 ? trimmed : fromR1C1(trimmed, context), sheet, row, column);
    }),
  ),
  inContext('ISFORMULA', 'p', (context, value) => {
    const { sheet, top, left } = areaOf(value);
    return context.workbook.formulaAt(sheet, top, left) !== undefined;
  }),
  inContext('FORMULATEXT', 'p', (context, value) => {
    const { sheet, top, left } = areaOf(value);
    const text = context.workbook.formulaAt(sheet, top, left);
    return text === undefined ? raise('#N/A') : `=${text}`;
  }),
  inContext('SHEET', 'p?', (context, value) => {
    if (typeof value === 'string') {
      const at = context.workbook.sheetNames.findIndex((name) => name.toLowerCase() === value.toLowerCase());
      return at < 0 ? raise('#N/A') : at + 1;
    }
    return areaOf(value ?? own(context)).sheet + 1;
  }),
  inContext('SHEETS', 'p?', (context, value) => {
    if (value === undefined) return context.workbook.sheetNames.length;
    if (!(value instanceof Reference)) return areaOf(value).sheet;
    return new Set(value.areas.map(({ sheet }) => sheet)).size;
  }),
  volatile(
    inContext('CELL', 'tp?', (context, what, value) =>
      cellInfo(context, what, areaOf(value ?? own(context))),
    ),
  ),
  /** All that the formula of a cell fills, `A1#`: the cell is calculated first. */
  inContext('ANCHORARRAY', 'r', (context, value) => {
    const { sheet, top, left } = areaOf(value);
    context.array(Reference.cell(sheet, top, left));
    const area = context.workbook.spillAt(sheet, top, left);
    return area ? new Reference([area]) : raise('#REF!');
  }),
];

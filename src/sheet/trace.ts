/** What a cell's formula reads, what reads it, and where its error began. */
import type { Book, CellPlace } from './book';
import type { SheetArea } from './values';

export interface Trace {
  /** The place of the formula that fills the cell, and its text without `=`; absent for what is typed. */
  readonly formula?: CellPlace & { readonly text: string };
  /** Each once, in the order in which the formula names them. */
  readonly reads: readonly SheetArea[];
  /** It may read more than its text names, as INDIRECT does. */
  readonly readsMore: boolean;
  readonly readers: readonly CellPlace[];
  /** From the cell that the formula reads to the one where the error began; empty where there is none, or it began here. */
  readonly error: readonly CellPlace[];
}

/** Cells of an area that are looked through for an error. */
const MOST_CELLS = 20_000;
const MOST_STEPS = 200;

export function traceOf(book: Book, place: CellPlace): Trace {
  const formula = book.formulaAt(place);
  const seen = new Set<string>();
  const reads = (formula ? book.reads(formula) : []).filter((area) => {
    const key = JSON.stringify([area.sheet, area.top, area.left, area.bottom, area.right]);
    return !seen.has(key) && seen.add(key);
  });
  return {
    ...(formula && { formula }),
    reads,
    readsMore: formula !== undefined && book.isVolatile(formula),
    readers: unique(book.readers(place)),
    error: errorPath(book, place),
  };
}

/** From reader to read, along the cells that have this very error: others may be caught, as by IFERROR. */
function errorPath(book: Book, from: CellPlace): CellPlace[] {
  const path: CellPlace[] = [];
  const been = new Set([keyOf(from)]);
  const origin = originOf(book, from);
  let at: CellPlace | undefined = origin === undefined ? undefined : from;
  while (at && path.length < MOST_STEPS) {
    at = book
      .reads(at)
      .flatMap(cellsOf)
      .find((one) => originOf(book, one) === origin && !been.has(keyOf(one)));
    if (!at) break;
    been.add(keyOf(at));
    path.push(at);
  }
  return path;
}

const originOf = (book: Book, { sheet, row, column }: CellPlace): string | undefined =>
  book.errorOrigin(sheet, row, column);

function cellsOf({ sheet, top, left, bottom, right }: SheetArea): CellPlace[] {
  const width = right - left + 1;
  const count = Math.min(MOST_CELLS, (bottom - top + 1) * width);
  return Array.from({ length: count }, (_, at) => ({
    sheet,
    row: top + Math.floor(at / width),
    column: left + (at % width),
  }));
}

const keyOf = ({ sheet, row, column }: CellPlace): string => `${sheet} ${row} ${column}`;

const unique = (places: readonly CellPlace[]): CellPlace[] => [
  ...new Map(
    places.map(({ sheet, row, column }) => [`${sheet} ${row} ${column}`, { sheet, row, column }]),
  ).values(),
];

/** Cells and areas as formulas name them: from the formula's own cell, or fixed. */
import { parseA1Ref } from '@borgar/fx/xlsx';
import { MAX_COLUMNS, MAX_ROWS } from '../../cells/address';
import { Keep, type SheetArea } from '../values';

/** One edge: a row or column from the sheet's first, or from the formula's own. */
interface Edge {
  readonly at: number;
  readonly isFixed: boolean;
}

/** Where a formula stands. */
export interface At {
  readonly sheet: number;
  readonly row: number;
  readonly column: number;
}

/** Cells as a formula writes them. */
export class Place {
  readonly isCell: boolean;

  constructor(
    /** The sheets, first and last; absent = the formula's own. */
    readonly sheets: readonly [number, number] | undefined,
    readonly top: Edge,
    readonly left: Edge,
    readonly bottom: Edge,
    readonly right: Edge,
  ) {
    this.isCell = (sheets === undefined || sheets[0] === sheets[1]) && same(top, bottom) && same(left, right);
  }

  row(at: At): number {
    return this.top.isFixed ? this.top.at : wrapped(this.top.at + at.row, MAX_ROWS);
  }

  column(at: At): number {
    return this.left.isFixed ? this.left.at : wrapped(this.left.at + at.column, MAX_COLUMNS);
  }

  sheet(at: At): number {
    return this.sheets ? this.sheets[0] : at.sheet;
  }

  areas(at: At): SheetArea[] {
    const [first, last] = this.sheets ?? [at.sheet, at.sheet];
    const rows = edges(this.top, this.bottom, at.row, MAX_ROWS);
    const columns = edges(this.left, this.right, at.column, MAX_COLUMNS);
    const areas: SheetArea[] = [];
    for (let sheet = first; sheet <= last; sheet++) {
      areas.push({ sheet, top: rows[0], bottom: rows[1], left: columns[0], right: columns[1] });
    }
    return areas;
  }
}

const same = (a: Edge, b: Edge): boolean => a.at === b.at && a.isFixed === b.isFixed;

/** Names with relative cells count on over the sheet's edge. */
const wrapped = (at: number, size: number): number => (at < 0 ? at + size : at >= size ? at - size : at);

function edges(first: Edge, last: Edge, own: number, size: number): [number, number] {
  const a = first.isFixed ? first.at : wrapped(first.at + own, size);
  const b = last.isFixed ? last.at : wrapped(last.at + own, size);
  return a <= b ? [a, b] : [b, a];
}

/** Finds a sheet's index by its name. */
export type SheetFinder = (name: string) => number | undefined;

/**
 * Reads `'My sheet'!$A1:B2`, `A:A`, `First:Last!C3` as written in the cell at `from`; undefined where a sheet is missing.
 * Whole rows and columns move with a name only: in cells they are no part of the shape.
 */
export function readPlace(
  text: string,
  from: At,
  isName: boolean,
  sheetNamed: SheetFinder,
): Place | undefined {
  const found = parseA1Ref(text);
  if (!found || !('range' in found)) throw new Keep(`It cannot be read: ${text}.`);
  if (found.workbookName) throw new Keep(`It refers to another workbook: ${text}.`);
  const { top, left, bottom, right, ...marks } = found.range;
  if ('trim' in marks && marks.trim) {
    throw new Keep(`Ranges cut to their used part are not known: ${text}.`);
  }
  let sheets: [number, number] | undefined;
  if (found.sheetName) {
    const one = sheetNamed(found.sheetName);
    const parts = found.sheetName.split(':');
    const first = one ?? sheetNamed(parts[0] ?? '');
    const last = one ?? (parts.length === 2 ? sheetNamed(parts[1] ?? '') : undefined);
    if (first === undefined || last === undefined) return undefined;
    sheets = first <= last ? [first, last] : [last, first];
  }
  const isWhole = (edge: number | null | undefined) => edge === null || edge === undefined;
  const stays = !isName && [top, left, bottom, right].some(isWhole);
  const edge = (
    at: number | null | undefined,
    isFixed: boolean | null | undefined,
    own: number,
    whole: number,
  ): Edge =>
    at === null || at === undefined
      ? { at: whole, isFixed: true }
      : isFixed || stays
        ? { at, isFixed: true }
        : { at: at - own, isFixed: false };
  return new Place(
    sheets,
    edge(top, marks.$top, from.row, 0),
    edge(left, marks.$left, from.column, 0),
    edge(bottom, marks.$bottom, from.row, MAX_ROWS - 1),
    edge(right, marks.$right, from.column, MAX_COLUMNS - 1),
  );
}

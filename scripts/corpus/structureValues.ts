/**
 * Every formula's value before and after an act on the structure. One that differs needs a reason that a spreadsheet
 * program would have too: cells that it reads were deleted, or it asks where it stands. The rest are faults.
 */
import { worksheetFunctions } from '../../src/call/functions';
import { areaContains, cellAddress, type Area } from '../../src/cells/address';
import { CellError, type CellValue } from '../../src/cells/value';
import type { Workbook } from '../../src/package/model';
import { Book, type CellPlace } from '../../src/sheet/book';
import { Stopped } from '../../src/sheet/budget';
import type { SheetArea } from '../../src/sheet/values';
import { contentOf } from '../../src/workbook/content';
import { near } from './score';

export interface PlacedArea extends Area {
  readonly sheet: string;
}
/** Where an act puts an area; undefined where nothing of it is left. */
export type Places = (sheet: string, area: Area) => PlacedArea | undefined;

export interface ValuesCompared {
  readonly compared: number;
  /** Formulas with another value, by the reason. */
  readonly reasons: Readonly<Record<string, number>>;
  readonly faults: readonly string[];
}

/** Formulas whose result tells of the place that they stand or look at, not only of what is there. */
const ASKS_WHERE = /\b(?:ROW|COLUMN|CELL|SHEET|SHEETS|FORMULATEXT|ADDRESS)\(/i;
const SPAN = /(?:'[^']*:[^']*'|[\w.]+:[\w.]+)!/;

const MILLISECONDS = 4000;
const single = (row: number, column: number): Area => ({
  top: row,
  bottom: row,
  left: column,
  right: column,
});
const sameValue = (a: CellValue, b: CellValue): boolean => {
  if (a instanceof CellError || b instanceof CellError)
    return a instanceof CellError && b instanceof CellError && a.code === b.code;
  return typeof a === 'number' && typeof b === 'number' ? near(a, b) : a === b;
};
const told = (value: CellValue): string =>
  value instanceof CellError ? value.code : JSON.stringify(value).slice(0, 40);

interface Calculated {
  readonly workbook: Workbook;
  readonly book: Book;
}

/** Undefined where the calculation takes too long to be done after each act. */
export function calculatedFully(workbook: Workbook): Calculated | undefined {
  const book = new Book(contentOf(workbook), worksheetFunctions);
  try {
    book.calculate({ time: MILLISECONDS });
  } catch (error) {
    if (error instanceof Stopped) return undefined;
    throw error;
  }
  return { workbook, book };
}

interface Difference {
  readonly before: CellPlace;
  readonly after: CellPlace;
  readonly formula: string;
}

/** `places` tells where each cell that had a formula lies; what is gone is left out. `only`: the formulas of one sheet. */
export function compareValues(
  before: Calculated,
  after: Calculated,
  places: Places,
  only?: string,
): ValuesCompared {
  const index = new Map(after.workbook.sheets.map(({ name }, i) => [name.toLowerCase(), i]));
  const placed = (sheet: number, area: Area): SheetArea | undefined => {
    const at = places(before.workbook.sheets[sheet]?.name ?? '', area);
    const to = at && index.get(at.sheet.toLowerCase());
    return at && to !== undefined
      ? { sheet: to, top: at.top, left: at.left, bottom: at.bottom, right: at.right }
      : undefined;
  };
  const faults: string[] = [];
  const differing: Difference[] = [];
  let compared = 0;
  before.workbook.sheets.forEach((sheet, s) => {
    if (only !== undefined && sheet.name !== only) return;
    for (const { row, column, formula } of sheet.cells) {
      if (formula === undefined) continue;
      const to = placed(s, single(row, column));
      if (!to) continue;
      compared++;
      const one = {
        before: { sheet: s, row, column },
        after: { sheet: to.sheet, row: to.top, column: to.left },
        formula,
      };
      if (!readsAlike(before, after, one, placed))
        faults.push(`${told2(before, one)} reads other cells afterwards`);
      if (!sameResults(before.book, after.book, one)) differing.push(one);
    }
  });
  const reasons: Record<string, number> = {};
  const differs = new Map<number, CellPlace[]>();
  for (const { before: at } of differing) differs.set(at.sheet, [...(differs.get(at.sheet) ?? []), at]);
  for (const one of differing) {
    const reason = reasonOf(before, after, one, placed, differs);
    if (reason === undefined)
      faults.push(
        `${told2(before, one)}: ${told(valueAt(before.book, one.before))} became ${told(valueAt(after.book, one.after))}`,
      );
    else reasons[reason] = (reasons[reason] ?? 0) + 1;
  }
  return { compared, reasons, faults };
}

const told2 = ({ workbook }: Calculated, { before: { sheet, row, column }, formula }: Difference): string =>
  `${workbook.sheets[sheet]?.name ?? ''}!${cellAddress(row, column)} =${formula.slice(0, 150)}`;

const valueAt = (book: Book, { sheet, row, column }: CellPlace): CellValue => book.value(sheet, row, column);

function sameResults(before: Book, after: Book, one: Difference): boolean {
  if (!sameValue(valueAt(before, one.before), valueAt(after, one.after))) return false;
  const [old, now] = [
    before.spill(one.before.sheet, one.before.row, one.before.column),
    after.spill(one.after.sheet, one.after.row, one.after.column),
  ];
  if (!old || !now) return !old && !now;
  const [height, width] = [old.bottom - old.top, old.right - old.left];
  if (now.bottom - now.top !== height || now.right - now.left !== width) return false;
  for (let r = 0; r <= Math.min(height, 200); r++)
    for (let c = 0; c <= Math.min(width, 50); c++)
      if (
        !sameValue(
          before.value(one.before.sheet, one.before.row + r, one.before.column + c),
          after.value(one.after.sheet, one.after.row + r, one.after.column + c),
        )
      )
        return false;
  return true;
}

type Placing = (sheet: number, area: Area) => SheetArea | undefined;

/** What the formula names, be it through names and tables, is what it named. */
function readsAlike(before: Calculated, after: Calculated, one: Difference, placed: Placing): boolean {
  const old = before.book.reads(one.before);
  if (SPAN.test(one.formula)) return true;
  const expected = old.map((area) => placed(area.sheet, area));
  if (expected.some((area) => area === undefined)) return true;
  const now = after.book.reads(one.after);
  return (
    expected.length === now.length &&
    expected.every((area, i) => {
      const found = now[i];
      return area && found && (sameArea(area, found) || isTableGrown(after, area, found));
    })
  );
}

/** A row put in below the headings of a table belongs to its columns, though it stands above what they were. */
const isTableGrown = ({ workbook }: Calculated, expected: SheetArea, found: SheetArea): boolean =>
  expected.sheet === found.sheet &&
  found.top <= expected.top &&
  found.bottom >= expected.bottom &&
  found.left === expected.left &&
  found.right === expected.right &&
  (workbook.sheets[found.sheet]?.tables ?? []).some(
    ({ area }) => areaContains(area, found.top, found.left) && areaContains(area, found.bottom, found.right),
  );

const sameArea = (a: SheetArea, b: SheetArea): boolean =>
  a.sheet === b.sheet && a.top === b.top && a.left === b.left && a.bottom === b.bottom && a.right === b.right;

function reasonOf(
  before: Calculated,
  after: Calculated,
  one: Difference,
  placed: Placing,
  differs: ReadonlyMap<number, readonly CellPlace[]>,
): string | undefined {
  const areas = before.book.reads(one.before);
  if (areas.some((area) => placed(area.sheet, area) === undefined)) return 'a deleted reference';
  if (before.book.isVolatile(one.before)) return 'time, chance or a reference made from text';
  if (ASKS_WHERE.test(one.formula)) return 'asks where something stands';
  if (SPAN.test(one.formula)) return 'reads a span of sheets';
  if (areas.some((area) => !keepsItsCells(before, after, area, placed)))
    return 'an area with other cells in it';
  if (areas.some((area) => movesApart(one, area, placed))) return 'an area that moved past the formula';
  const value = valueAt(after.book, one.after);
  if (value instanceof CellError && value.code === '#SPILL!') return 'no room to spill';
  const isFed = areas.some((area) =>
    differs
      .get(area.sheet)
      ?.some(
        (at) => at !== one.before && touches(area, before.book.spill(at.sheet, at.row, at.column) ?? at),
      ),
  );
  return isFed ? 'reads one of these' : undefined;
}

const touches = (area: Area, other: Area | CellPlace): boolean =>
  'row' in other
    ? areaContains(area, other.row, other.column)
    : area.top <= other.bottom &&
      area.bottom >= other.top &&
      area.left <= other.right &&
      area.right >= other.left;

/** Each cell of the area stands where it stood in it, and none came in. */
function keepsItsCells(before: Calculated, after: Calculated, area: SheetArea, placed: Placing): boolean {
  const now = placed(area.sheet, area);
  if (
    !now ||
    now.bottom - now.top !== area.bottom - area.top ||
    now.right - now.left !== area.right - area.left
  )
    return false;
  const cells = ({ workbook }: Calculated, { sheet, ...one }: SheetArea) =>
    (workbook.sheets[sheet]?.cells ?? []).filter(
      ({ row, column, value, formula }) =>
        (value !== null || formula !== undefined) && areaContains(one, row, column),
    );
  const old = cells(before, area);
  if (cells(after, now).length !== old.length) return false;
  return old.every(({ row, column }) => {
    const at = placed(area.sheet, single(row, column));
    return (
      at?.sheet === now.sheet &&
      at.top - now.top === row - area.top &&
      at.left - now.left === column - area.left
    );
  });
}

/** A formula that takes one cell of an area, the one beside it, may meet another. */
function movesApart({ before, after }: Difference, area: SheetArea, placed: Placing): boolean {
  const now = placed(area.sheet, area);
  if (!now || (area.top === area.bottom && area.left === area.right)) return false;
  return (
    now.top - after.row !== area.top - before.row || now.left - after.column !== area.left - before.column
  );
}

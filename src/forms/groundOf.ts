import { areaContains, areasOverlap, columnLetters, parseArea, type Area } from '../cells/address';
import { SYSTEMS, type System } from '../core/quantity';
import { cellFinder, type Sheet, type Workbook } from '../package/model';
import { freeSheetName } from '../package/sheetNames';
import type { Ground, KnownInput } from './ground';
import { CannotWrite, type Place } from './plan';
import { HEADS } from './rows';

/** The sheet for lists too long for a cell's rule. */
const LISTS = 'Lists';

/** The ground that a sheet of a calculated workbook is. */
export function groundOf(workbook: Workbook, sheetName: string): Ground {
  const sheet = workbook.sheets.find(({ name }) => name.toLowerCase() === sheetName.toLowerCase());
  if (!sheet) {
    const names = workbook.sheets.map(({ name }) => `"${name}"`).join(', ');
    throw new CannotWrite(`The workbook has no sheet "${sheetName}"; it has ${names}.`);
  }
  const named = namedCells(workbook);
  const taken = new Set(workbook.names.map(({ name }) => name.toLowerCase()));
  const units = unitsOf(sheet, named);
  const cellAt = cellFinder(sheet);
  return {
    sheet: sheet.name,
    ...(units && { units }),
    filled: (area) => filledIn(sheet, area),
    locked: (area) => lockedIn(workbook, sheet, area),
    hasHeads: (column, above) =>
      sheet.cells.some(
        (cell) =>
          cell.row < above &&
          cell.column === column &&
          HEADS.every((head, i) => cellAt(cell.row, column + i)?.value === head),
      ),
    isTaken: (name) => taken.has(name.toLowerCase()),
    inputs: named,
    width: (column) => widthOf(sheet, column),
    lists: listsIn(workbook),
  };
}

/** The ground that a sheet is which the workbook, where there is one, does not have yet; its name gets a number where it is taken. */
export function newGround(wanted: string, workbook?: Workbook): Ground {
  const taken = new Set(workbook?.names.map(({ name }) => name.toLowerCase()));
  return {
    sheet: freeSheetName(wanted, workbook?.sheets.map(({ name }) => name) ?? []),
    filled: () => undefined,
    locked: () => undefined,
    hasHeads: () => false,
    isTaken: (name) => taken.has(name.toLowerCase()),
    inputs: [],
    width: () => undefined,
    lists: listsIn(workbook),
  };
}

const systemNamed = (value: unknown): System | undefined => SYSTEMS.find((system) => system === value);

/** Names of the whole workbook that stand for one cell. */
function namedCells(workbook: Workbook): KnownInput[] {
  return workbook.names.flatMap(({ name, formula, sheet: own, hidden }): KnownInput[] => {
    const found = /^(?:'((?:[^']|'')+)'|([^'!]+))!(\$[A-Z]{1,3}\$\d+)$/i.exec(formula);
    const place = parseArea(found?.[3] ?? '');
    const sheetName = (found?.[1]?.replaceAll("''", "'") ?? found?.[2] ?? '').toLowerCase();
    const sheet = workbook.sheets.find((one) => one.name.toLowerCase() === sheetName);
    if (!place || !sheet || hidden || own !== undefined) return [];
    const cellAt = cellFinder(sheet);
    const unit = cellAt(place.top, place.left + 1)?.value;
    return [
      {
        name,
        sheet: sheet.name,
        row: place.top,
        column: place.left,
        value: cellAt(place.top, place.left)?.value ?? null,
        isTyped: cellAt(place.top, place.left)?.formula === undefined,
        unit: typeof unit === 'string' ? unit : '',
      },
    ];
  });
}

/** A cell named `units`, or one that takes only `in` and `mm`. */
function unitsOf(sheet: Sheet, named: readonly KnownInput[]): Ground['units'] {
  const byName = named.find(
    ({ name, sheet: on, value }) => on === sheet.name && /^units(_\d+)?$/i.test(name) && systemNamed(value),
  );
  const system = systemNamed(byName?.value);
  if (byName && system) return { row: byName.row, column: byName.column, system, name: byName.name };
  const cellAt = cellFinder(sheet);
  for (const { areas, choices } of sheet.validations) {
    if (choices?.length !== SYSTEMS.length || !choices.every((one) => systemNamed(one))) continue;
    for (const { top: row, left: column } of areas) {
      const chosen = systemNamed(cellAt(row, column)?.value);
      if (chosen) return { row, column, system: chosen };
    }
  }
  return undefined;
}

function filledIn(sheet: Sheet, area: Area): Place | undefined {
  const cell = sheet.cells.find(
    ({ row, column, value, formula }) =>
      areaContains(area, row, column) && (formula !== undefined || (value !== null && value !== '')),
  );
  if (cell) return { row: cell.row, column: cell.column };
  const spills = sheet.cells.flatMap(({ spill }) => (spill ? [spill] : []));
  const other = [...spills, ...sheet.merges, ...sheet.tables.map((table) => table.area)].find((one) =>
    areasOverlap(one, area),
  );
  return other && { row: Math.max(other.top, area.top), column: Math.max(other.left, area.left) };
}

function lockedIn(workbook: Workbook, sheet: Sheet, area: Area): Place | undefined {
  if (!sheet.isProtected) return undefined;
  const cellAt = cellFinder(sheet);
  const rowStyles = new Map(sheet.rows.map(({ row, style }) => [row, style]));
  for (let row = area.top; row <= area.bottom; row++) {
    for (let column = area.left; column <= area.right; column++) {
      const run = sheet.columns.find(({ first, last }) => column >= first && column <= last);
      const style = cellAt(row, column)?.style ?? rowStyles.get(row) ?? run?.style ?? 0;
      if (workbook.styles[style]?.locked !== false) return { row, column };
    }
  }
  return undefined;
}

function widthOf(sheet: Sheet, column: number): number | undefined {
  const isUsed = sheet.cells.some((cell) => cell.column === column && cell.value !== null);
  const run = sheet.columns.find(({ first, last }) => column >= first && column <= last);
  return isUsed ? (run?.width ?? sheet.defaultColumnWidth) : undefined;
}

function listsIn(workbook: Workbook | undefined): Ground['lists'] {
  const sheet = workbook?.sheets.find(({ name }) => name === LISTS);
  return {
    sheet: LISTS,
    present: sheet ? listsOn(sheet) : [],
    free: sheet ? sheet.cells.reduce((most, cell) => Math.max(most, cell.column + 1), 0) : 0,
  };
}

function listsOn(sheet: Sheet): Ground['lists']['present'] {
  return sheet.cells
    .filter(({ row, value }) => row === 0 && typeof value === 'string')
    .map(({ column, value }) => ({
      title: String(value),
      column,
      words: sheet.cells.filter((cell) => cell.row > 0 && cell.column === column && cell.value !== null)
        .length,
    }));
}

/** The row under all that stands on a sheet, one left free between. */
export function nextRow(sheet: Sheet): number {
  const last = sheet.cells.reduce(
    (most, { row, value, formula }) => (value === null && formula === undefined ? most : Math.max(most, row)),
    -1,
  );
  return last < 0 ? 0 : last + 2;
}

export const absoluteArea = ({ top, left, bottom, right }: Area): string => {
  const corner = (row: number, column: number) => `$${columnLetters(column)}$${row + 1}`;
  const first = corner(top, left);
  const last = corner(bottom, right);
  return first === last ? first : `${first}:${last}`;
};

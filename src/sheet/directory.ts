/** The sheets, names, tables and functions of a workbook, found as formulas write them. */
import { areaContains, parseCell } from '../cells/address';
import { NAMESPACE } from '../cells/namespace';
import { nearestNames } from '../tables/names';
import type { BookContent, BookTable } from './content';
import type { Directory, TablePlace } from './formula/code';
import type { At } from './formula/places';
import type { SheetFunction } from './functions/spec';

export function directoryOf(
  { sheets, names }: BookContent,
  functions: ReadonlyMap<string, SheetFunction>,
): Directory {
  const byName = new Map(sheets.map(({ name }, index) => [name.toLowerCase(), index]));
  const tables = sheets.flatMap((sheet, index) => sheet.tables.map((table) => placed(table, index)));
  const tableByName = new Map(tables.map((table) => [table.name.toLowerCase(), table]));
  const named = new Map(
    names.map(({ name, formula, sheet }) => [
      nameKey(name, sheet && byName.get(sheet.toLowerCase())),
      formula,
    ]),
  );
  return {
    functions,
    sheetNamed: (name) => byName.get(name.toLowerCase()),
    tableNamed: (name) => tableByName.get(name.toLowerCase()),
    tableAt: ({ sheet, row, column }: At) =>
      tables.find((table) => table.sheet === sheet && areaContains(table.area, row, column)),
    named: (name, sheet) => named.get(nameKey(name, sheet)) ?? named.get(nameKey(name, undefined)),
    cellLike: new Set(
      [...names, ...tables]
        .map(({ name }) => name.toUpperCase())
        .filter((name) => parseCell(name) !== undefined),
    ),
    unknownFunction: (name) => unknownFunction(name, functions),
  };
}

const placed = (table: BookTable, sheet: number): TablePlace => ({ ...table, sheet });

/** A name that one sheet alone knows goes before that of the workbook. */
const nameKey = (name: string, sheet: number | '' | undefined): string =>
  `${sheet ?? ''}!${name.toLowerCase()}`;

function unknownFunction(name: string, functions: ReadonlyMap<string, SheetFunction>): string {
  const ours = `${NAMESPACE}.`;
  if (!name.toUpperCase().startsWith(ours)) {
    const meant = functions.get(`${ours}${name.toUpperCase()}`);
    return `There is no function or name ${name}${meant === undefined ? '' : `; ${meant.name} is`}.`;
  }
  const ids = Array.from(functions.values()).flatMap((one) =>
    one.isOurs ? [one.name.slice(ours.length)] : [],
  );
  const nearest = nearestNames(name.slice(ours.length), ids).map((id) => ours + id);
  return `There is no function ${name}; nearest: ${nearest.join(', ')}.`;
}

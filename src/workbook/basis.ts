/** With which basis the numbers of a workbook were saved, and which of them are others since. */
import { BASIS_TEXT } from '../call/version';
import type { WorksheetFunction } from '../call/worksheetFunction';
import { tokenize } from '../cells/formulaTokens';
import { NAMESPACE } from '../cells/namespace';
import type { Changes } from '../package/changes';
import { readCustomProperty, withCustomProperty } from '../package/customProperties';
import type { Workbook } from '../package/model';
import { saveWorkbook } from '../package/save';
import { calledFunctions, callsOurs } from '../package/spelling';
import type { Book, CellPlace } from '../sheet/book';

const PROPERTY = 'Moldsheet';
const PREFIX = new RegExp(`^=?${NAMESPACE}\\.`);

/** A sheet that does not say so was saved by another program, or before the first change. */
const FIRST_BASIS = 1;

export const savedWith = (workbook: Workbook): number =>
  Number(/^basis (\d+)/.exec(readCustomProperty(workbook, PROPERTY) ?? '')?.[1] ?? FIRST_BASIS);

/** As `saveWorkbook`, of values that this basis gave: the file says so where it holds formulas of ours. */
export function saveCalculated(workbook: Workbook, changes: Changes): Uint8Array {
  const cells = [...workbook.sheets.flatMap((sheet) => sheet.cells), ...changes];
  const isOurs = cells.some(({ formula }) => formula !== undefined && callsOurs(formula));
  return saveWorkbook(isOurs ? withCustomProperty(workbook, PROPERTY, BASIS_TEXT) : workbook, changes);
}

/** Why a cell's value is another one since the workbook was saved; empty where the basis has no part in it. */
export type Reasons = (place: CellPlace) => readonly string[];

/**
 * Goes through the formulas whose functions answer otherwise than when the workbook was saved, and whose value is indeed
 * another one, then on to all that reads them.
 */
export function basisReasons(
  workbook: Workbook,
  book: Book,
  functions: readonly WorksheetFunction[],
  changed: (place: CellPlace) => boolean,
): Reasons {
  const since = savedWith(workbook);
  const changes = new Map(
    functions.flatMap(({ id, changes: all = [] }) => {
      const says = all.flatMap(({ basis, says: why }) => (basis > since ? [`${id}: ${why}`] : []));
      return says.length > 0 ? [[id, says] as const] : [];
    }),
  );
  const found = new Map<string, Set<string>>();
  const key = ({ sheet, row, column }: CellPlace): string => `${sheet} ${row} ${column}`;
  const spread = (from: CellPlace, why: string): void => {
    const open = [from];
    for (let place = open.pop(); place; place = open.pop()) {
      const reasons = found.get(key(place)) ?? new Set();
      if (reasons.has(why)) continue;
      found.set(key(place), reasons.add(why));
      open.push(...book.readers(place));
    }
  };
  if (changes.size > 0) {
    workbook.sheets.forEach(({ cells }, sheet) => {
      for (const { row, column, formula } of cells) {
        const place = { sheet, row, column };
        if (formula === undefined || !changed(place) || !callsOurs(formula)) continue;
        for (const id of functionsIn(formula)) for (const why of changes.get(id) ?? []) spread(place, why);
      }
    });
  }
  return (place) => [...(found.get(key(place)) ?? [])];
}

/** Those that a formula calls, and those that it names to another: `TRY.SOLVE("SEAT.SINK",…)`. */
function functionsIn(formula: string): string[] {
  const named = tokenize(formula).flatMap(({ kind, text }) =>
    kind === 'string' ? [text.slice(1, -1).trim().toUpperCase().replace(PREFIX, '')] : [],
  );
  return [...new Set([...calledFunctions(formula).map((id) => id.toUpperCase()), ...named])];
}

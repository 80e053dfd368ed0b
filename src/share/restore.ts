import type { WorksheetFunction } from '../call/worksheetFunction';
import { readCustomXml, removeSheets, withoutCustomXml } from '../package/author';
import { recalculate } from '../workbook/recalculate';
import { tokenize } from '../cells/formulaTokens';
import { cellAddress, parseArea } from '../cells/address';
import { cellFinder, type Sheet, type Workbook } from '../package/model';
import type { CellChange } from '../package/changes';
import { readWorkbook } from '../package';
import { saveWorkbook } from '../package/save';
import { saveCalculated } from '../workbook/basis';
import { contentText, ORIGINAL_NAMESPACE, readOriginal, type OriginalCell } from './original';

/** A cell that is not as it was when the copy was made. */
export interface ChangedCell {
  readonly sheet: string;
  readonly cell: string;
  readonly before: string;
  readonly now: string;
  /** The formula that would have come back; the colleague's content stays in its place. */
  readonly kept?: string;
}

export interface RestoreReport {
  readonly bytes: Uint8Array;
  /** Formulas put back. */
  readonly restored: number;
  readonly changed: readonly ChangedCell[];
  /** The basis with which the copy was made. */
  readonly basis: string;
}

/** A shared copy as a sheet of ours again; undefined where it carries no original formulas. */
export async function restoreWorkbook(
  workbook: Workbook,
  functions: readonly WorksheetFunction[],
): Promise<RestoreReport | undefined> {
  const xml = readCustomXml(workbook, ORIGINAL_NAMESPACE);
  if (xml === undefined) return undefined;
  const original = readOriginal(xml);
  const changed: ChangedCell[] = [];
  const changes: CellChange[] = [];
  let restored = 0;
  for (const { name, cells } of original.sheets) {
    const sheet = workbook.sheets.find((one) => one.name === name);
    if (!sheet) {
      changed.push({ sheet: name, cell: '', before: 'the sheet', now: 'is gone' });
      continue;
    }
    const find = cellFinder(sheet);
    const mine = spilledCells(cells);
    for (const cell of cells) {
      const { row, column, is, was } = cell;
      const now = contentText(find(row, column));
      const isSame = sameContent(is, now);
      const anchor = mine.get(`${row} ${column}`);
      if (!isSame) {
        const told = { sheet: name, cell: cellAddress(row, column), before: shown(is), now: shown(now) };
        changed.push({ ...told, ...(was !== undefined && { kept: was }) });
      } else if (was !== undefined) {
        restored += 1;
        changes.push(...formulaBack(sheet, cell, was));
      } else if (anchor) changes.push({ sheet: name, row, column, value: null });
    }
    changed.push(...additions(sheet, cells));
  }
  const ids = functions.map(({ id }) => id);
  const back = readWorkbook(saveWorkbook(workbook, changes), ids);
  const bare = withoutCustomXml(removeSheets(back, original.added), ORIGINAL_NAMESPACE);
  const results = await recalculate(bare, functions);
  const final = saveCalculated(
    bare,
    results.filter((one) => one.changed),
  );
  return { bytes: final, restored, changed, basis: original.basis };
}

function formulaBack(sheet: Sheet, { row, column }: OriginalCell, was: string): CellChange[] {
  const value = cellFinder(sheet)(row, column)?.value ?? null;
  return [{ sheet: sheet.name, row, column, formula: was, value }];
}

/** Cells that the original formulas filled from elsewhere. */
function spilledCells(cells: readonly OriginalCell[]): Map<string, OriginalCell> {
  const filled = new Map<string, OriginalCell>();
  for (const cell of cells) {
    const area = cell.spill === undefined ? undefined : parseArea(cell.spill);
    if (!area) continue;
    for (let row = area.top; row <= area.bottom; row++) {
      for (let column = area.left; column <= area.right; column++) {
        if (row !== cell.row || column !== cell.column) filled.set(`${row} ${column}`, cell);
      }
    }
  }
  return filled;
}

function additions(sheet: Sheet, cells: readonly OriginalCell[]): ChangedCell[] {
  const known = new Set(cells.map(({ row, column }) => `${row} ${column}`));
  return sheet.cells.flatMap((cell): ChangedCell[] => {
    const { row, column, value, formula } = cell;
    if (known.has(`${row} ${column}`) || (value === null && formula === undefined)) return [];
    return [{ sheet: sheet.name, cell: cellAddress(row, column), before: '', now: shown(contentText(cell)) }];
  });
}

/** Another program may write the same formula with other spaces, capitals and digits. */
function sameContent(before: string, now: string): boolean {
  if (before === now) return true;
  if (before.startsWith('=') && now.startsWith('=')) return normal(before) === normal(now);
  const [a, b] = [parsed(before), parsed(now)];
  return (
    typeof a === 'number' &&
    typeof b === 'number' &&
    Math.abs(a - b) <= 1e-12 * Math.max(Math.abs(a), Math.abs(b))
  );
}

const normal = (formula: string): string =>
  tokenize(formula)
    .filter(({ kind }) => kind !== 'space')
    .map(({ kind, text }) =>
      kind === 'number'
        ? Number(text).toPrecision(14)
        : kind === 'string'
          ? text
          : text.toUpperCase().replace(/[$']/g, ''),
    )
    .join('');

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return text;
  }
}

const shown = (content: string): string => {
  if (content.startsWith('=')) return content;
  const value = parsed(content);
  return typeof value === 'string' ? value : content === 'null' ? '' : content;
};

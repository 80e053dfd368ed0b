import type { CellValue } from '../cells/value';
import { kindsWithUnit } from '../core/readQuantity';
import type { CellView, WorkbookCells } from '../workbook/cells';
import type { CellRef } from './plan';
import { cellText } from './plan';

/** What a sheet says of a cell. */
export interface Heading {
  readonly cell: CellRef;
  /** The words beside or above the cell; its address where there are none. */
  readonly label: string;
  readonly unit: string;
  /** The cell that says the unit. */
  readonly unitCell?: CellRef;
}

/** How far labels are looked for, in cells to the left and above. */
const LEFT = 12;
const ABOVE = 40;

/** The unit that a cell names. */
function unitOf(value: CellValue): string | undefined {
  const text = typeof value === 'string' ? value.trim() : '';
  return text === '%' || (text !== '' && kindsWithUnit(text).length > 0) ? text : undefined;
}

/** Words that may be a label. A dash, which many sheets write for "no unit", is none. */
const isWords = (value: CellValue): value is string =>
  typeof value === 'string' && /\p{L}/u.test(value) && unitOf(value) === undefined;

/** Finds the label to the left of a cell, else above it, and the unit to its right, else under the label above. */
export async function headingOf(cells: WorkbookCells, cell: CellRef): Promise<Heading> {
  const { sheet, row, column } = cell;
  const left = Math.min(LEFT, column);
  const [line = []] = await cells.read({ sheet, row, column: column - left, rows: 1, columns: left + 2 });
  const right = unitOf(line[left + 1]?.value ?? null);
  const unit =
    right !== undefined ? { unit: right, unitCell: { ...cell, column: column + 1 } } : { unit: '' };
  const label = wordsBeside(line.slice(0, left));
  return label === undefined ? { ...unit, ...(await headingAbove(cells, cell)) } : { cell, label, ...unit };
}

async function headingAbove(
  cells: WorkbookCells,
  cell: CellRef,
): Promise<Pick<Heading, 'cell' | 'label'> & Partial<Heading>> {
  const above = Math.min(ABOVE, cell.row);
  const top = cell.row - above;
  const pillar = above === 0 ? [] : await cells.read({ ...cell, row: top, rows: above, columns: 1 });
  const values = pillar.map(([view]) => view?.value ?? null);
  const at = values.map(isWords).lastIndexOf(true);
  if (at < 0) return { cell, label: cellText(cell) };
  const label = String(values[at]).trim();
  const unit = unitOf(values[at + 1] ?? null);
  return { cell, label, ...(unit !== undefined && { unit, unitCell: { ...cell, row: top + at + 1 } }) };
}

/**
 * The label of a line: from the cell to the left, the first words there, or what stands before them where a symbol or
 * another text lies between.
 */
function wordsBeside(line: readonly CellView[]): string | undefined {
  let found: string | undefined;
  for (const { value } of [...line].reverse()) {
    if (isWords(value)) found = value.trim();
    else if (found !== undefined) break;
  }
  return found;
}

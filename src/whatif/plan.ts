import { Refusal } from '../core/refusal';
import type { CellInput, CellView, Range, WorkbookCells } from '../workbook/cells';
import { cellAddress, parseArea, parseCell } from '../cells/address';

/** One cell; row and column count from 0. */
export interface CellRef {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** The cell that has a name in the workbook. */
export type Named = (name: string) => CellRef | undefined;

export interface Varied {
  readonly cell: CellRef;
  readonly values: readonly CellInput[];
}

export interface Plan {
  /** One or two; the values of the last one change fastest. */
  readonly vary: readonly Varied[];
  readonly results: readonly CellRef[];
  /** A person has agreed that values stand in for the formulas of input cells during the run. */
  readonly overFormulas?: boolean;
}

/** More is no table that anybody reads. */
export const MOST_RUNS = 10_000;

export const cellText = ({ sheet, row, column }: CellRef): string => {
  const name =
    /^[\p{L}_][\p{L}\p{N}_]*$/u.test(sheet) && !parseCell(sheet) ? sheet : `'${sheet.replaceAll("'", "''")}'`;
  return `${name}!${cellAddress(row, column)}`;
};

/** Reads `Insert!C6`, `'Two words'!$C$6`, and `C6` on the sheet given. */
export function readCell(text: string, sheet: string, named?: Named): CellRef {
  const [, quoted, plain, address = ''] = /^(?:'((?:[^']|'')+)'!|([^'!]+)!)?([^!]+)$/.exec(text.trim()) ?? [];
  const place = parseCell(address.trim());
  if (!place) {
    const cell = named?.(text.trim());
    if (cell) return cell;
    throw new Refusal(`"${text}" is no cell${named ? ' and no name of one' : ''}; write it as Insert!C6.`);
  }
  return { sheet: quoted?.replaceAll("''", "'") ?? plain ?? sheet, ...place };
}

/** `Insert!C20,Insert!C24:C26`: cells and areas, one by one. */
export function readCells(text: string, sheet: string, named?: Named): CellRef[] {
  const parts = text.match(/(?:'(?:[^']|'')*'|[^,'])+/g) ?? [];
  return parts.flatMap((part) => {
    const [from = '', to, ...more] = part.split(/:(?=[^!']*$)/);
    const first = readCell(from, sheet, named);
    if (to === undefined) return [first];
    const area = parseArea(`${cellAddress(first.row, first.column)}:${to.trim()}`);
    if (!area || more.length > 0)
      throw new Refusal(`${part} is no area of cells; write it as Insert!C20:C24.`);
    return Array.from({ length: area.bottom - area.top + 1 }, (_, down) =>
      Array.from({ length: area.right - area.left + 1 }, (__, right) => ({
        sheet: first.sheet,
        row: area.top + down,
        column: area.left + right,
      })),
    ).flat();
  });
}

/** Worksheets take no notice of the case of their names. */
export const isSameName = (a: string, b: string): boolean => a.toLowerCase() === b.toLowerCase();

export const sameCell = (a: CellRef, b: CellRef): boolean =>
  isSameName(a.sheet, b.sheet) && a.row === b.row && a.column === b.column;

export const rangeOf = (cell: CellRef): Range => ({ ...cell, rows: 1, columns: 1 });

export async function viewOf(cells: WorkbookCells, cell: CellRef): Promise<CellView> {
  const [[view] = []] = await cells.read(rangeOf(cell));
  if (!view) throw new Refusal(`There is no cell ${cellText(cell)}.`);
  return view;
}

/** Every combination of the values, the last input's changing fastest. */
export function combinations(vary: readonly Varied[]): CellInput[][] {
  return vary.reduce<CellInput[][]>(
    (rows, { values }) => rows.flatMap((row) => values.map((value) => [...row, value])),
    [[]],
  );
}

/** Refuses what makes no table. */
export function checkPlan({ vary, results }: Plan): void {
  if (vary.length === 0) throw new Refusal('Choose a cell to vary.');
  if (vary.length > 2) throw new Refusal('Vary at most two cells: the outcome is a table.');
  if (results.length === 0) throw new Refusal('Choose at least one result cell.');
  const [first, second] = vary;
  if (first && second && sameCell(first.cell, second.cell)) {
    throw new Refusal(`${cellText(first.cell)} is varied twice.`);
  }
  for (const { cell, values } of vary) {
    if (values.length === 0) throw new Refusal(`Give ${cellText(cell)} values.`);
    if (results.some((result) => sameCell(result, cell))) {
      throw new Refusal(`${cellText(cell)} is varied and a result at once.`);
    }
  }
  const runs = vary.reduce((product, { values }) => product * values.length, 1);
  if (runs > MOST_RUNS)
    throw new Refusal(`That makes ${runs} variations; at most ${MOST_RUNS} are run at once.`);
}

import type { CellValue, Matrix } from '../cells/value';
import { SYSTEMS, type System } from '../core/quantity';

/** The system of units that a cell names: `in` or `mm`, case and blanks aside. */
export function systemNamed(cell: CellValue): System | undefined {
  if (typeof cell !== 'string') return undefined;
  if (cell === 'in' || cell === 'mm') return cell;
  const word = cell.replace(/\s/g, '').toLowerCase();
  return SYSTEMS.find((system) => system === word);
}

/**
 * The arguments of a call in their places, units last. Units may come early: where the last argument that is not
 * left out is one cell that reads `in` or `mm`, it is the units, and what would stand in its place is left out. So
 * nobody counts commas, and a function may get new optional arguments without a stored call changing its meaning.
 */
export function inPlaces<A>(
  args: readonly (A | null | undefined)[],
  unitsPlace: number,
  cellsOf: (arg: A) => Matrix,
): readonly (A | undefined)[] {
  const placed: (A | undefined)[] = [];
  let last = -1;
  // By its length: an array with holes would pass over them.
  for (let i = 0; i < args.length; i++) {
    const arg = args[i] ?? undefined;
    placed.push(arg);
    if (arg !== undefined) last = i;
  }
  const given = placed[last];
  if (given === undefined || last >= unitsPlace || !isUnits(cellsOf(given))) return placed;
  placed[last] = undefined;
  while (placed.length < unitsPlace) placed.push(undefined);
  placed[unitsPlace] = given;
  return placed;
}

const isUnits = (cells: Matrix): boolean =>
  cells.length === 1 && cells[0]?.length === 1 && systemNamed(cells[0][0] ?? null) !== undefined;

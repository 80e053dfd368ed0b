/** What keeps cells from being sorted or written over, in a sentence that names it. */
import { areaAddress, areaContains, areasOverlap, cellAddress, type Area } from '../../cells/address';
import type { Sheet } from '../../package/model';

/** Merges and results of several cells that an area meets. */
export function blocked(area: Area, merges: readonly Area[], spills: readonly Area[]): string | undefined {
  const merge = merges.find((one) => areasOverlap(one, area));
  if (merge) return `The merged cells ${areaAddress(merge)} are in the way: part them first.`;
  const spill = spills.find((one) => areasOverlap(one, area));
  return spill && `The results in ${areaAddress(spill)} come from one formula and are in the way.`;
}

/** What hangs on the cells of rows that would move without it. */
export function leftBehind(
  { notes, hyperlinks, tables }: Pick<Sheet, 'notes' | 'hyperlinks' | 'tables'>,
  area: Area,
  moves: (row: number) => boolean,
): string | undefined {
  const table = tables.find(
    (one) =>
      areasOverlap(one.area, area) &&
      ((one.hasHeader && one.area.top >= area.top && one.area.top <= area.bottom) ||
        (one.hasTotals && one.area.bottom >= area.top && one.area.bottom <= area.bottom)),
  );
  if (table)
    return `The headings or totals of the table "${table.name}" are among the rows: select the rows between them.`;
  const isMoved = (row: number, column: number): boolean => areaContains(area, row, column) && moves(row);
  const note = notes.find(({ row, column }) => isMoved(row, column));
  if (note) return `The note on ${cellAddress(note.row, note.column)} would not go along: take it off first.`;
  const link = hyperlinks.find(({ area: { top, left } }) => isMoved(top, left));
  return (
    link && `The link on ${cellAddress(link.area.top, link.area.left)} would not go along: take it off first.`
  );
}

import type { Area } from '../cells/address';
import type { StyleDescription } from '../package/description';

export interface LookArea {
  readonly area: Area;
  readonly look: StyleDescription;
}

interface DressedCell {
  readonly row: number;
  readonly column: number;
  readonly look: StyleDescription;
}

/**
 * Cells as few areas of one look each: Excel takes a look for an area at once, and refuses a request of
 * more than 5 MB, which a whole design cell by cell comes near.
 */
export function lookAreas(cells: readonly DressedCell[]): readonly LookArea[] {
  const down = joined(
    cells.map(({ row, column, look }) => ({
      area: { top: row, left: column, bottom: row, right: column },
      look,
    })),
    (a, b) => a.left - b.left || a.top - b.top,
    (a, b) => a.left === b.left && a.right === b.right && a.bottom + 1 === b.top,
  );
  return joined(
    down,
    (a, b) => a.top - b.top || a.bottom - b.bottom || a.left - b.left,
    (a, b) => a.top === b.top && a.bottom === b.bottom && a.right + 1 === b.left,
  );
}

/** Neighbors of one look become one area. */
function joined(
  areas: readonly LookArea[],
  order: (a: Area, b: Area) => number,
  meet: (a: Area, b: Area) => boolean,
): readonly LookArea[] {
  const all: (LookArea & { readonly key: string })[] = [];
  for (const { area, look } of [...areas].sort((a, b) => order(a.area, b.area))) {
    const key = JSON.stringify(look);
    const last = all.at(-1);
    if (last?.key === key && meet(last.area, area))
      all[all.length - 1] = {
        ...last,
        area: { ...last.area, bottom: area.bottom, right: area.right },
      };
    else all.push({ area, look, key });
  }
  return all;
}

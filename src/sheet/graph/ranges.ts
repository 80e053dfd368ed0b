/** The distinct ranges that formulas read, found by the cells in them. */
import type { SheetArea } from '../values';
import { BLOCK_ROWS, type SheetCells } from './cells';
import { Range, type Formula } from './nodes';

/** So many columns or blocks: no entry for each, but one in a list that is always looked through. */
const WIDE = 64;
const TALL = 16;

export class Ranges {
  private readonly byArea = new Map<string, Range>();

  constructor(private readonly sheets: readonly SheetCells[]) {}

  find(area: SheetArea): Range | undefined {
    return this.byArea.get(keyOf(area));
  }

  /** The node of an area, made where there is none. */
  at(area: SheetArea): Range {
    const key = keyOf(area);
    let range = this.byArea.get(key);
    if (!range) {
      range = new Range(area);
      this.byArea.set(key, range);
      for (const list of this.lists(area)) list.push(range);
    }
    return range;
  }

  removeUser(range: Range, user: Formula): void {
    const at = range.users.indexOf(user);
    if (at >= 0) range.users.splice(at, 1);
    if (range.users.length > 0) return;
    this.byArea.delete(keyOf(range.area));
    for (const list of this.lists(range.area)) list.splice(list.indexOf(range), 1);
  }

  /** Visits the ranges that hold a cell. */
  holding(sheet: number, row: number, column: number, visit: (range: Range) => void): void {
    const cells = this.sheets[sheet];
    if (!cells) return;
    const look = (list: readonly Range[] | undefined) => {
      if (!list) return;
      for (const range of list) {
        const { top, bottom, left, right } = range.area;
        if (row >= top && row <= bottom && column >= left && column <= right) visit(range);
      }
    };
    look(cells.wide);
    const own = cells.columns[column];
    look(own?.tall);
    look(own?.ranges[Math.floor(row / BLOCK_ROWS)]);
  }

  private *lists({ sheet, top, bottom, left, right }: SheetArea): Generator<Range[]> {
    const cells = this.sheets[sheet];
    if (!cells) return;
    if (right - left >= WIDE) {
      yield cells.wide;
      return;
    }
    const first = Math.floor(top / BLOCK_ROWS);
    const last = Math.floor(bottom / BLOCK_ROWS);
    for (let column = left; column <= right; column++) {
      const own = cells.column(column);
      if (last - first >= TALL) yield own.tall;
      else for (let block = first; block <= last; block++) yield (own.ranges[block] ??= []);
    }
  }
}

const keyOf = ({ sheet, top, left, bottom, right }: SheetArea): string =>
  `${sheet} ${top} ${left} ${bottom} ${right}`;

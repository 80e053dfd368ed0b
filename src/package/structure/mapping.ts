/** Where cells and areas lie after an act. */
import { MAX_COLUMNS, MAX_ROWS, type Area } from '../../cells/address';

export interface Placed extends Area {
  readonly sheet: string;
}

export interface Mapping {
  /** Undefined: nothing of the area is left. */
  area(sheet: string, area: Area): Placed | undefined;
}

interface Extent {
  readonly from: number;
  readonly to: number;
}

export type Axis = 'rows' | 'columns';

export const extent = (area: Area, axis: Axis): Extent =>
  axis === 'rows' ? { from: area.top, to: area.bottom } : { from: area.left, to: area.right };

export const across = (axis: Axis): Axis => (axis === 'rows' ? 'columns' : 'rows');

export const sizeOf = (axis: Axis): number => (axis === 'rows' ? MAX_ROWS : MAX_COLUMNS);

export const withExtent = (area: Area, axis: Axis, { from, to }: Extent): Area =>
  axis === 'rows' ? { ...area, top: from, bottom: to } : { ...area, left: from, right: to };

export const inside = (inner: Extent, outer: Extent): boolean =>
  inner.from >= outer.from && inner.to <= outer.to;

/** An area that takes the axis in whole, such as `A:A`, stays what it is. */
const whole = (one: Extent, axis: Axis): boolean => one.from === 0 && one.to === sizeOf(axis) - 1;

/** What an insertion of `count` before `at` makes of an extent; undefined where it leaves the sheet. */
export function inserted(one: Extent, axis: Axis, at: number, count: number): Extent | undefined {
  if (whole(one, axis) || one.to < at) return one;
  const last = sizeOf(axis) - 1;
  const from = one.from >= at ? one.from + count : one.from;
  return from > last ? undefined : { from, to: Math.min(one.to + count, last) };
}

/** What the deletion of `count` from `at` leaves of an extent. */
export function deleted(one: Extent, axis: Axis, at: number, count: number): Extent | undefined {
  if (whole(one, axis)) return one;
  const after = (line: number, edge: 'from' | 'to'): number => {
    if (line < at) return line;
    if (line >= at + count) return line - count;
    return edge === 'from' ? at : at - 1;
  };
  const [from, to] = [after(one.from, 'from'), after(one.to, 'to')];
  return from > to ? undefined : { from, to };
}

type Change = (one: Extent, axis: Axis, at: number, count: number) => Extent | undefined;

/**
 * Lines inserted or deleted within a band of the other axis. What reaches beyond the band stays: a reference to it
 * would otherwise speak of cells that did not move.
 */
export function lines(
  change: Change,
  sheet: string,
  axis: Axis,
  at: number,
  count: number,
  band: Extent = { from: 0, to: sizeOf(across(axis)) - 1 },
): Mapping {
  return {
    area(where, area) {
      if (where !== sheet || !inside(extent(area, across(axis)), band)) return { ...area, sheet: where };
      const changed = change(extent(area, axis), axis, at, count);
      return changed && { ...withExtent(area, axis, changed), sheet: where };
    },
  };
}

/** A block of cells put elsewhere: what points into it follows; what pointed at the place it lands on is gone. */
export function block(sheet: string, source: Area, to: Placed): Mapping {
  const down = to.top - source.top;
  const right = to.left - source.left;
  return {
    area(where, area) {
      if (where === sheet && contains(source, area))
        return {
          sheet: to.sheet,
          top: area.top + down,
          bottom: area.bottom + down,
          left: area.left + right,
          right: area.right + right,
        };
      if (where === to.sheet && contains(to, area)) return undefined;
      return { ...area, sheet: where };
    },
  };
}

export const contains = (outer: Area, inner: Area): boolean =>
  inner.top >= outer.top &&
  inner.bottom <= outer.bottom &&
  inner.left >= outer.left &&
  inner.right <= outer.right;

/** Whole lines taken out and put in before another line; the lines between close up. */
export function reordered(sheet: string, axis: Axis, at: number, count: number, to: number): Mapping {
  const line = (one: number): number => {
    if (one >= at && one < at + count) return to > at ? one - at + to - count : one - at + to;
    if (to > at && one >= at + count && one < to) return one - count;
    if (to < at && one >= to && one < at) return one + count;
    return one;
  };
  return {
    area(where, area) {
      const one = extent(area, axis);
      if (where !== sheet || whole(one, axis)) return { ...area, sheet: where };
      // Edges follow their own lines, as long as the area stays in one piece.
      const [a, b] = [line(one.from), line(one.to)];
      return { ...withExtent(area, axis, { from: Math.min(a, b), to: Math.max(a, b) }), sheet: where };
    },
  };
}

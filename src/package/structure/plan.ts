import { areasOverlap, MAX_COLUMNS, MAX_ROWS, type Area } from '../../cells/address';
import { CannotChange, type StructureAct } from './acts';
import {
  across,
  block,
  contains,
  deleted,
  extent,
  inserted,
  lines,
  reordered,
  sizeOf,
  withExtent,
  type Axis,
  type Mapping,
} from './mapping';

/** An act that moves cells, as every part of the file needs to know it. */
export interface Plan extends Mapping {
  readonly sheet: string;
  /** Where the row or column itself goes, with its height or width; blocks of cells leave it where it is. */
  line(axis: Axis, at: number): number | undefined;
  /** An area cut where its parts go different ways. */
  cut(sheet: string, area: Area): readonly Area[];
  /** Lines that come anew, and the one before them whose look they take. */
  readonly opened?: { readonly axis: Axis; readonly at: number; readonly count: number };
  /** What lies at the edge of the sheet would fall off it. */
  readonly pushes: boolean;
  /** Axis along which cells move, where they move along one. */
  readonly axis?: Axis;
}

type MovingAct = Extract<
  StructureAct,
  {
    readonly do:
      'insert' | 'delete' | 'insertCells' | 'deleteCells' | 'moveCells' | 'moveRows' | 'moveColumns';
  }
>;

export function planOf(act: MovingAct): Plan {
  const { sheet } = act;
  switch (act.do) {
    case 'insert':
    case 'delete': {
      checkLines(act.what, act.at, act.count);
      const change = act.do === 'insert' ? inserted : deleted;
      return {
        ...lines(change, sheet, act.what, act.at, act.count),
        sheet,
        pushes: act.do === 'insert',
        axis: act.what,
        line: (axis, at) =>
          axis === act.what ? change({ from: at, to: at }, axis, act.at, act.count)?.from : at,
        cut: (_, area) => [area],
        ...(act.do === 'insert' && { opened: { axis: act.what, at: act.at, count: act.count } }),
      };
    }
    case 'insertCells':
    case 'deleteCells': {
      const { from, to } = extent(act.area, act.shift);
      const band = extent(act.area, across(act.shift));
      const change = act.do === 'insertCells' ? inserted : deleted;
      return {
        ...lines(change, sheet, act.shift, from, to - from + 1, band),
        sheet,
        pushes: act.do === 'insertCells',
        axis: act.shift,
        line: (_, at) => at,
        cut: (where, area) => {
          if (where !== sheet) return [area];
          const strip = withExtent(withExtent(area, across(act.shift), band), act.shift, {
            from,
            to: sizeOf(act.shift) - 1,
          });
          return areasOverlap(area, strip) ? pieces(area, withExtent(area, across(act.shift), band)) : [area];
        },
      };
    }
    case 'moveCells': {
      const { area, to } = act;
      const target = {
        sheet: to.sheet,
        top: to.row,
        left: to.column,
        bottom: to.row + area.bottom - area.top,
        right: to.column + area.right - area.left,
      };
      if (target.bottom >= MAX_ROWS || target.right >= MAX_COLUMNS || to.row < 0 || to.column < 0)
        throw new CannotChange('The cells would leave the sheet there.');
      return {
        ...block(sheet, area, target),
        sheet,
        pushes: false,
        line: (_, at) => at,
        cut: (where, one) => {
          const around = where === sheet ? pieces(one, area) : [one];
          if (where !== to.sheet) return around;
          return around.flatMap((piece) =>
            where === sheet && contains(area, piece) ? [piece] : pieces(piece, target),
          );
        },
      };
    }
    case 'moveRows':
    case 'moveColumns': {
      const axis = act.do === 'moveRows' ? 'rows' : 'columns';
      checkLines(axis, act.at, act.count);
      if (act.to > act.at && act.to < act.at + act.count)
        throw new CannotChange(`The ${axis} would be put between themselves.`);
      const mapping = reordered(sheet, axis, act.at, act.count, act.to);
      const bounds = [...new Set([act.at, act.at + act.count, act.to])];
      return {
        ...mapping,
        sheet,
        pushes: false,
        axis,
        line: (one, at) => {
          if (one !== axis) return at;
          const corner = { top: at, bottom: at, left: at, right: at };
          const placed = mapping.area(sheet, corner);
          return placed && extent(placed, axis).from;
        },
        cut: (where, area) => (where === sheet ? cutAlong(area, axis, bounds) : [area]),
      };
    }
  }
}

function checkLines(axis: Axis, at: number, count: number): void {
  if (!(
    Number.isInteger(at) &&
    Number.isInteger(count) &&
    at >= 0 &&
    count > 0 &&
    at + count <= sizeOf(axis)
  ))
    throw new CannotChange(`There are no such ${axis} in a sheet.`);
}

/** The parts of an area within and outside of another. */
function pieces(area: Area, other: Area): Area[] {
  if (!areasOverlap(area, other)) return [area];
  const top = Math.max(area.top, other.top);
  const bottom = Math.min(area.bottom, other.bottom);
  const left = Math.max(area.left, other.left);
  const right = Math.min(area.right, other.right);
  return [
    { ...area, bottom: top - 1 },
    { top, bottom, left: area.left, right: left - 1 },
    { top, bottom, left, right },
    { top, bottom, left: right + 1, right: area.right },
    { ...area, top: bottom + 1 },
  ].filter((one) => one.top <= one.bottom && one.left <= one.right);
}

function cutAlong(area: Area, axis: Axis, bounds: readonly number[]): Area[] {
  const { from, to } = extent(area, axis);
  if (from === 0 && to === sizeOf(axis) - 1) return [area];
  const starts = [from, ...bounds.filter((bound) => bound > from && bound <= to).sort((a, b) => a - b)];
  return starts.map((start, i) => withExtent(area, axis, { from: start, to: (starts[i + 1] ?? to + 1) - 1 }));
}

/** Pictures, charts and controls are hung on cells: `from` and `to` name a row and a column each, with distances. */
import { childrenOf, child, descendants, numeric, type Edit, type XmlElement } from '../xml';
import type { Rewriting } from './formula';
import type { Axis } from './mapping';
import type { Plan } from './plan';

const LAST = { rows: 'row', columns: 'col' } as const;

/** Edits of all anchors inside an element. */
export function anchorEdits(element: XmlElement, plan: Plan, how: Rewriting): Edit[] {
  const holders = [
    ...descendants(element, 'twoCellAnchor'),
    ...descendants(element, 'oneCellAnchor'),
    ...descendants(element, 'anchor'),
  ];
  return holders.flatMap((anchor) => {
    const from = child(anchor, 'from');
    if (!from || isFixed(anchor)) return [];
    const to = child(anchor, 'to');
    const movesOnly = anchor.attributes['editAs'] === 'oneCell' || anchor.attributes['sizeWithCells'] === '0';
    return (['rows', 'columns'] as const).flatMap((axis) => {
      const start = lineOf(from, axis);
      const begins = anchorLine(plan, how, axis, start, other(from, axis));
      if (!to) return setLine(from, axis, start, begins);
      const end = lineOf(to, axis);
      const ends = movesOnly
        ? { line: end + begins.line - start, gone: false }
        : anchorLine(plan, how, axis, end, other(to, axis));
      return [...setLine(from, axis, start, begins), ...setLine(to, axis, end, ends)];
    });
  });
}

const isFixed = ({ attributes }: XmlElement): boolean => attributes['editAs'] === 'absolute';

const lineOf = (corner: XmlElement, axis: Axis): number => numeric(child(corner, LAST[axis])?.text, 0);

const other = (corner: XmlElement, axis: Axis): number =>
  lineOf(corner, axis === 'rows' ? 'columns' : 'rows');

interface Line {
  readonly line: number;
  /** The line itself was deleted: the corner stands at the start of the next. */
  readonly gone: boolean;
}

/** Where a corner on a line goes: with its cell. */
export function anchorLine(plan: Plan, how: Rewriting, axis: Axis, line: number, across: number): Line {
  const [row, column] = axis === 'rows' ? [line, across] : [across, line];
  const at = (one: number): number | undefined => {
    const [r, c] = axis === 'rows' ? [one, column] : [row, one];
    const placed = plan.area(how.from, { top: r, bottom: r, left: c, right: c });
    return placed?.sheet === how.to ? (axis === 'rows' ? placed.top : placed.left) : undefined;
  };
  const here = at(line);
  if (here !== undefined) return { line: here, gone: false };
  for (let before = line - 1; before >= 0; before--) {
    const found = at(before);
    if (found !== undefined) return { line: found + 1, gone: true };
  }
  return { line: 0, gone: true };
}

function setLine(corner: XmlElement, axis: Axis, old: number, { line, gone }: Line): Edit[] {
  const edits: Edit[] = [];
  const set = (name: string, text: string): void => {
    for (const one of childrenOf(corner, name))
      if (!one.selfClosing) edits.push({ start: one.end, end: one.closeStart, text });
  };
  if (line !== old) set(LAST[axis], String(line));
  if (gone) set(axis === 'rows' ? 'rowOff' : 'colOff', '0');
  return edits;
}

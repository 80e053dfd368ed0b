/** How a what-if looks that is written into a workbook. */
import { areaAddress, cellAddress, type Area } from '../../cells/address';
import type { ConditionDescription, OverlayDescription, StyleDescription } from '../../package/description';
import type { Verdict } from '../../core/strength';
import { LIMIT } from '../verdictMatrix';
import { RUN_AGAIN } from './made';

const INK = '#1F2D3A';
const QUIET = '#5A6772';
const HEAD = '#24475C';
const thin = { line: 'thin', color: '#D5DCE2' } as const;
const borders = { top: thin, right: thin, bottom: thin, left: thin };

export const STYLES = {
  title: { font: { bold: true, size: 14, color: HEAD } },
  note: { font: { color: QUIET } },
  status: { font: { bold: true, color: INK } },
  head: {
    font: { bold: true, color: '#FFFFFF' },
    fill: HEAD,
    wrap: true,
    horizontal: 'center',
    vertical: 'center',
    borders,
  },
  tried: { fill: '#FFF7D1', font: { color: '#0B3D91' }, borders },
  value: { borders },
  label: { borders, wrap: true },
} as const satisfies Record<string, StyleDescription>;

const red: OverlayDescription = { fill: '#FFC7CE', font: { color: '#9C0006' } };
const amber: OverlayDescription = { fill: '#FFEB9C', font: { color: '#7F6000' } };
const green: OverlayDescription = { fill: '#C6EFCE', font: { color: '#006100' } };

const OF_VERDICT: readonly (readonly [Verdict, OverlayDescription])[] = [
  ['does not hold', red],
  ['little to spare', amber],
  ['not known', amber],
  ['holds', green],
];

/** Colors cells by the verdict that the cell given tells, seen from the first of them. */
export const verdictColors = (cells: string, verdict: string): ConditionDescription[] =>
  OF_VERDICT.map(([words, style]) => ({ cells, when: `ISNUMBER(SEARCH("${words}",${verdict}))`, style }));

/**
 * Lines where the limit runs: between cells of which one tells that something does not hold, and its neighbor does not.
 * `verdicts` are the cells that tell it, one for each of `cells`.
 */
export function limitLines(cells: Area, verdicts: Area): ConditionDescription[] {
  const fails = (row: number, column: number): string =>
    `ISNUMBER(SEARCH("${LIMIT}",${cellAddress(row, column)}))`;
  const { top, left } = verdicts;
  const down = (one: Area): Area => ({ ...one, top: one.top + 1 });
  const across = (one: Area): Area => ({ ...one, left: one.left + 1 });
  // Both sides of a line, or the thin border of the neighbor would lie over it.
  const sides = [
    { side: 'right', area: { ...cells, right: cells.right - 1 }, from: [top, left], to: [top, left + 1] },
    { side: 'left', area: across(cells), from: [top, left + 1], to: [top, left] },
    { side: 'bottom', area: { ...cells, bottom: cells.bottom - 1 }, from: [top, left], to: [top + 1, left] },
    { side: 'top', area: down(cells), from: [top + 1, left], to: [top, left] },
  ] as const;
  return sides.flatMap(({ side, area, from, to }) =>
    area.bottom < area.top || area.right < area.left
      ? []
      : [
          {
            cells: areaAddress(area),
            when: `${fails(...from)}<>${fails(...to)}`,
            style: { borders: { [side]: { line: 'thin', color: '#000000' } } },
          },
        ],
  );
}

/** What says that results are old. */
export const OLD = red;

export const statusColor = (row: number, column: number): ConditionDescription => {
  const cell = cellAddress(row, column);
  return { cells: cell, when: `${cell}="${RUN_AGAIN}"`, style: red };
};

export const changedColor = (cells: string, first: string, changed: string): ConditionDescription => ({
  cells,
  when: `${first}="${changed}"`,
  style: red,
});

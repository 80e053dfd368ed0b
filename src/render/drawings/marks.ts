/** Lines, bars and points of a chart, in the box of its plot. */
import type { ReadPlot, ReadSeries } from './chartData';
import { element, short } from './svg';

/** Where values lie, in pixels. */
export interface Places {
  /** Along the first axis: of a place counted from 0, or of a value. */
  readonly along: (at: number, value: number) => number;
  readonly value: (value: number) => number;
  /** Pixels of one place along the axis. */
  readonly slot: number;
  /** Where bars begin. */
  readonly zero: number;
  /** The first axis runs down, and bars lie. */
  readonly lies: boolean;
  /** Places run up or to the left, and so do the bars of each. */
  readonly backwards: boolean;
}

export interface Stacked {
  readonly from: number;
  readonly to: number;
}

/** The stretch of every value: from 0, or from the end of the one below. */
export function stacked({ series, grouping }: ReadPlot): readonly (readonly (Stacked | null)[])[] {
  if (grouping === 'clustered')
    return series.map(({ values }) => values.map((to) => (to === null ? null : { from: 0, to })));
  const totals = new Map<number, number>();
  if (grouping === 'percentStacked')
    for (const { values } of series)
      values.forEach((value, at) => totals.set(at, (totals.get(at) ?? 0) + Math.abs(value ?? 0)));
  const ends = { above: new Map<number, number>(), below: new Map<number, number>() };
  return series.map(({ values }) =>
    values.map((plain, at) => {
      if (plain === null) return null;
      const value = grouping === 'percentStacked' ? plain / (totals.get(at) || 1) : plain;
      const end = value < 0 ? ends.below : ends.above;
      const from = end.get(at) ?? 0;
      end.set(at, from + value);
      return { from, to: from + value };
    }),
  );
}

interface Bar {
  readonly nth: number;
  readonly value: number;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

function barsOf(plot: ReadPlot, places: Places): Bar[] {
  const { series, grouping, gap, overlap } = plot;
  const beside = grouping === 'clustered' ? series.length : 1;
  const step = 1 - (grouping === 'clustered' ? overlap / 100 : 0);
  const width = places.slot / (1 + (beside - 1) * step + gap / 100);
  const whole = width * (1 + (beside - 1) * step);
  return stacked(plot).flatMap((values, nth) => {
    const turn = places.backwards ? beside - 1 - nth : nth;
    const shift = grouping === 'clustered' ? turn * step * width : 0;
    return values.flatMap((value, at): Bar[] => {
      if (value === null) return [];
      const across = places.along(at, at) - whole / 2 + shift;
      const [a, b] = [value.from === 0 ? places.zero : places.value(value.from), places.value(value.to)];
      const [start, size] = [Math.min(a, b), Math.abs(a - b)];
      if (!Number.isFinite(start + size + across)) return [];
      const own = { nth, value: series[nth]?.values[at] ?? 0 };
      return [
        places.lies
          ? { ...own, x: start, y: across, width: size, height: width }
          : { ...own, x: across, y: start, width, height: size },
      ];
    });
  });
}

export const bars = (plot: ReadPlot, places: Places): string =>
  barsOf(plot, places)
    .map(({ nth, x, y, width, height }) =>
      element('rect', { x, y, width, height, fill: plot.series[nth]?.color }),
    )
    .join('');

function pointsOf(plot: ReadPlot, places: Places): (Point | null)[][] {
  const ends = stacked(plot);
  return plot.series.map((series, nth) =>
    (ends[nth] ?? []).map((value, at): Point | null => {
      if (value === null) return null;
      const given = plot.kind === 'scatter' ? series.along?.[at] : at;
      // Without numbers along it, the points of a scatter are counted.
      const x = places.along(at, typeof given === 'number' ? given : at + 1);
      const y = places.value(value.to);
      return Number.isFinite(x + y) && given !== null ? { x, y } : null;
    }),
  );
}

/** From the axis, or from the area below, up to the values; a value that is missing parts it. */
export function areas(plot: ReadPlot, places: Places): string {
  return stacked(plot)
    .map((values, nth) => {
      const stretches: { readonly x: number; readonly top: number; readonly bottom: number }[][] = [[]];
      values.forEach((value, at) => {
        if (value === null) stretches.push([]);
        else
          stretches.at(-1)?.push({
            x: places.along(at, at + 1),
            top: places.value(value.to),
            bottom: value.from === 0 ? places.zero : places.value(value.from),
          });
      });
      const fill = plot.series[nth]?.color ?? '';
      return stretches
        .filter((stretch) => stretch.length > 0)
        .map((stretch) =>
          path(
            fill,
            ...stretch.map(({ x, top }): [number, number] => [x, top]),
            ...[...stretch].reverse().map(({ x, bottom }): [number, number] => [x, bottom]),
          ),
        )
        .join('');
    })
    .join('');
}

export function lines(plot: ReadPlot, places: Places): string {
  const all = pointsOf(plot, places);
  return plot.series
    .map((series, nth) => joined(all[nth] ?? [], series) + markers(all[nth] ?? [], series))
    .join('');
}

/** A value beside its point, or at the end of its bar. */
export interface ValueLabel extends Point {
  readonly series: ReadSeries;
  readonly value: number;
  readonly anchor: 'start' | 'middle' | 'end';
}

/** Pixels between a point or bar and its label. */
const BESIDE = 4;

export function valueLabels(plot: ReadPlot, places: Places): ValueLabel[] {
  if (plot.kind !== 'column' && plot.kind !== 'bar')
    return pointsOf(plot, places).flatMap((points, nth) =>
      points.flatMap((point, at): ValueLabel[] => {
        const series = plot.series[nth];
        const value = series?.values[at];
        if (!point || !series?.labels || typeof value !== 'number') return [];
        return [{ series, value, x: point.x, y: point.y - BESIDE - 2, anchor: 'middle' }];
      }),
    );
  const isStacked = plot.grouping !== 'clustered';
  return barsOf(plot, places).flatMap(({ nth, value, x, y, width, height }): ValueLabel[] => {
    const series = plot.series[nth];
    if (!series?.labels) return [];
    const middle = { x: x + width / 2, y: y + height / 2 + BESIDE };
    if (isStacked) return [{ series, value, ...middle, anchor: 'middle' }];
    if (!places.lies)
      return [
        { series, value, x: middle.x, y: value < 0 ? y + height + 3 * BESIDE : y - BESIDE, anchor: 'middle' },
      ];
    return [
      value < 0
        ? { series, value, x: x - BESIDE, y: middle.y, anchor: 'end' }
        : { series, value, x: x + width + BESIDE, y: middle.y, anchor: 'start' },
    ];
  });
}

interface Point {
  readonly x: number;
  readonly y: number;
}

/** A value that is missing leaves a gap. */
function joined(points: readonly (Point | null)[], { color, line, dashed }: ReadSeries): string {
  if (line === 0) return '';
  let path = '';
  let isDown = false;
  for (const point of points) {
    if (point) path += `${isDown ? 'L' : 'M'}${short(point.x)} ${short(point.y)}`;
    isDown = point !== null;
  }
  if (path === '') return '';
  return element('path', {
    d: path,
    fill: 'none',
    stroke: color,
    'stroke-width': line,
    'stroke-linejoin': 'round',
    'stroke-linecap': 'round',
    'stroke-dasharray': dashed ? `${short(line * 3)} ${short(line * 2.5)}` : undefined,
  });
}

function markers(points: readonly (Point | null)[], series: ReadSeries): string {
  const { marker } = series;
  if (!marker) return '';
  return points.map((point) => (point ? markerAt(marker, point) : '')).join('');
}

type Marker = NonNullable<ReadSeries['marker']>;

export function markerAt({ shape, size, color }: Marker, { x, y }: Point): string {
  const r = size / 2;
  switch (shape) {
    case 'square':
      return element('rect', { x: x - r, y: y - r, width: size, height: size, fill: color });
    case 'diamond':
      return path(color, [x, y - r], [x + r, y], [x, y + r], [x - r, y]);
    case 'triangle':
      return path(color, [x, y - r], [x + r, y + r], [x - r, y + r]);
    case 'dash':
      return element('rect', { x: x - r, y: y - r / 4, width: size, height: r / 2, fill: color });
    case 'dot':
      return element('rect', { x: x - r / 2, y: y - r / 4, width: r, height: r / 2, fill: color });
    case 'x':
    case 'star':
      return cross(color, x, y, r * 0.8, true);
    case 'plus':
      return cross(color, x, y, r, false);
    default:
      return element('circle', { cx: x, cy: y, r, fill: color });
  }
}

const path = (fill: string, ...points: readonly [number, number][]): string =>
  element('polygon', { points: points.map(([x, y]) => `${short(x)},${short(y)}`).join(' '), fill });

const cross = (stroke: string, x: number, y: number, r: number, slanted: boolean): string =>
  element('path', {
    d: slanted
      ? `M${short(x - r)} ${short(y - r)}L${short(x + r)} ${short(y + r)}M${short(x - r)} ${short(y + r)}L${short(x + r)} ${short(y - r)}`
      : `M${short(x - r)} ${short(y)}L${short(x + r)} ${short(y)}M${short(x)} ${short(y - r)}L${short(x)} ${short(y + r)}`,
    stroke,
    'stroke-width': 1.3,
    fill: 'none',
  });

/** A chart of a workbook as SVG. */
import type { Chart, Size } from '../../package/drawings/model';
import { numberText } from '../../core/format';
import { shownText } from '../shownText';
import { textWidth } from '../textWidth';
import {
  readChartData,
  type Look,
  type ReadAxis,
  type ReadChart,
  type ReadPlot,
  type ReadSeries,
} from './chartData';
import { areas, bars, lines, markerAt, stacked, valueLabels, type Places } from './marks';
import { scaleOf, type Scale } from './scale';
import { element, words } from './svg';

export interface ChartOptions {
  /** Cells as they are now; the file's own values unless told. */
  readonly look?: Look;
  readonly date1904?: boolean;
}

/** Pixels; text sizes in points. */
const PAD = 8;
const TICK = 4;
const TITLE = { points: 12, pixels: 16 };
const SMALL = { points: 8.5, pixels: 11.3 };
const LINE_HEIGHT = 1.3;
const KEY = 22;
const BOLD = 1.08;
const MOST_TITLE_LINES = 2;
const FONT = 'Calibri, Carlito, Arial, "Liberation Sans", sans-serif';
const INK = '#404040';
const RULE = '#D9D9D9';
/** Pixels that a step of an axis takes at least. */
const STEP = { along: 70, up: 34 };
/** Letters of a category's name that are shown. */
const MOST_LETTERS = 22;
/** Of a slanted label's length: how far it reaches down, and across. */
const SLANT = 0.71;
const LEAST = 40;

const width = (text: string, points = SMALL.points): number => textWidth(text, points);

export function chartSvg(chart: Chart, size: Size, options: ChartOptions = {}): string {
  const data = readChartData(chart, options.look ?? (() => undefined));
  const inner =
    chart.notDrawn === undefined && size.width > LEAST && size.height > LEAST
      ? new ChartPainter(data, size, options.date1904 ?? false).paint()
      : framed(data.title === '' ? '' : `“${data.title}”`, chart.notDrawn ?? '', size);
  return wrapped(inner, size, data.title || 'Chart', chart.background ?? '#FFFFFF');
}

/** A frame with words, for what is not drawn. */
export function frameSvg(text: string, size: Size, fill = '#F7F7F7'): string {
  const rows = text.split('\n').flatMap((line) => broken(line, size.width - 2 * PAD));
  const line = SMALL.pixels * LINE_HEIGHT;
  const room = Math.max(1, Math.floor((size.height - PAD) / line));
  const shown = rows.slice(0, room);
  const inner = shown.map((row, at) =>
    words(row, { x: PAD, y: PAD + (at + 0.85) * line, 'font-size': SMALL.pixels, fill: INK }),
  );
  return wrapped(inner.join(''), size, text, fill);
}

function wrapped(inner: string, { width: w, height: h }: Size, name: string, fill: string): string {
  const edge = element('rect', {
    x: 0.5,
    y: 0.5,
    width: Math.max(0, w - 1),
    height: Math.max(0, h - 1),
    fill,
    stroke: RULE,
  });
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width: w,
      height: h,
      viewBox: `0 0 ${w} ${h}`,
      'font-family': FONT,
      role: 'img',
      'aria-label': name,
    },
    edge + inner,
  );
}

function framed(title: string, kind: string, size: Size): string {
  const text = kind === '' ? title : `${title} ${kind}: not drawn here; it is kept in the file.`.trim();
  const rows = broken(text.charAt(0).toUpperCase() + text.slice(1), size.width - 2 * PAD);
  return rows
    .map((row, at) =>
      words(row, {
        x: size.width / 2,
        y: size.height / 2 + (at - (rows.length - 1) / 2) * SMALL.pixels * LINE_HEIGHT,
        'text-anchor': 'middle',
        'font-size': SMALL.pixels,
        fill: INK,
      }),
    )
    .join('');
}

function broken(text: string, room: number, points = SMALL.points): string[] {
  const rows: string[] = [];
  for (const word of text.split(' ')) {
    const last = rows.at(-1);
    if (last !== undefined && width(`${last} ${word}`, points) <= room)
      rows[rows.length - 1] = `${last} ${word}`;
    else rows.push(word);
  }
  return rows;
}

interface Box {
  left: number;
  top: number;
  right: number;
  bottom: number;
}

/** The first axis: values of a scatter, else places with names. */
type Along = { readonly scale: Scale } | { readonly names: readonly string[]; readonly reversed: boolean };

const MARKS = { column: bars, bar: bars, area: areas, line: lines, scatter: lines } as const;

const isFilled = (kind: ReadPlot['kind']): boolean => kind === 'column' || kind === 'bar' || kind === 'area';

class ChartPainter {
  private readonly box: Box;
  private readonly out: string[] = [];
  private readonly lies: boolean;

  constructor(
    private readonly chart: ReadChart,
    private readonly size: Size,
    private readonly date1904: boolean,
  ) {
    this.box = { left: PAD, top: PAD, right: size.width - PAD, bottom: size.height - PAD };
    this.lies = chart.plots.some(({ kind }) => kind === 'bar');
  }

  paint(): string {
    this.title();
    this.leftOut();
    this.legend();
    const { values, second, along } = this.chart;
    const [down, across] = this.lies ? [along, values] : [values, along];
    this.sideTitle(down.title, 'left');
    if (second && !this.lies) this.sideTitle(second.title, 'right');
    this.bottomTitle(across.title);
    const alongScale = this.along();
    const first = this.valueScale(values, false);
    const other = second && this.valueScale(second, true);
    // Scales first, so that the room of their labels is known before anything is drawn.
    const [sideLabels, bottomLabels] = this.lies
      ? [this.alongLabels(alongScale), this.labels(first, values, false)]
      : [this.labels(first, values, false), this.alongLabels(alongScale)];
    if (down.shown) this.box.left += widest(sideLabels) + TICK + 4;
    if (other && second.shown) this.box.right -= widest(this.labels(other, second, true)) + TICK + 4;
    const bottom = this.bottomLabels(bottomLabels, alongScale);
    // The last number stands under the end of its axis, half of it beyond.
    if (this.lies || 'scale' in alongScale) this.box.right -= width(bottomLabels.at(-1) ?? '') / 2;
    if (across.shown) this.box.bottom -= bottom.height;
    this.grid(first, values);
    this.plots(alongScale, first, other);
    this.axisLines(alongScale, first);
    this.drawSide(sideLabels, alongScale, first, down);
    if (across.shown) this.drawBottom(bottomLabels, alongScale, first, bottom.slanted);
    if (other) this.drawSecond(other, second);
    return this.out.join('');
  }

  private title(): void {
    const { title } = this.chart;
    if (title === '') return;
    const room = this.size.width - 2 * PAD;
    for (const line of broken(title, room, TITLE.points * BOLD).slice(0, MOST_TITLE_LINES)) {
      this.text(line, this.size.width / 2, this.box.top + TITLE.pixels * 0.8, 'middle', {
        'font-size': TITLE.pixels,
        'font-weight': 'bold',
      });
      this.box.top += TITLE.pixels * LINE_HEIGHT;
    }
    this.box.top += 4;
  }

  /** Nobody should take a line that is missing here for one that the file has not. */
  private leftOut(): void {
    const { leftOut = [] } = this.chart;
    if (leftOut.length === 0) return;
    this.text(`Not drawn here: ${leftOut.join(', ')}.`, this.box.left, this.box.bottom, 'start');
    this.box.bottom -= SMALL.pixels * LINE_HEIGHT + 2;
  }

  private legend(): void {
    const { legend } = this.chart;
    const entries = this.chart.plots.flatMap(({ kind, series }) => series.map((one) => ({ kind, one })));
    if (legend === undefined || entries.length === 0) return;
    const line = SMALL.pixels * LINE_HEIGHT;
    const { box } = this;
    if (legend === 'left' || legend === 'right') {
      const room = (box.right - box.left) * 0.35;
      const wide = Math.min(room, KEY + Math.max(...entries.map(({ one }) => width(one.name) + 8)));
      const most = Math.floor((box.bottom - box.top) / line);
      const x = legend === 'right' ? box.right - wide : box.left;
      const top = (box.top + box.bottom - Math.min(most, entries.length) * line) / 2;
      entries.slice(0, most).forEach((entry, at) => {
        this.key(entry, x, top + at * line, wide - KEY);
      });
      if (legend === 'right') box.right -= wide + 6;
      else box.left += wide + 6;
      return;
    }
    const rows: (typeof entries)[] = [[]];
    let used = 0;
    for (const entry of entries) {
      const wide = KEY + width(entry.one.name) + 14;
      if (used + wide > box.right - box.left && used > 0) {
        rows.push([]);
        used = 0;
      }
      rows.at(-1)?.push(entry);
      used += wide;
    }
    const high = rows.length * line;
    const top = legend === 'bottom' ? box.bottom - high : box.top;
    rows.forEach((row, at) => {
      const wide = row.reduce((total, { one }) => total + KEY + width(one.name) + 14, -14);
      let x = Math.max(box.left, (box.left + box.right - wide) / 2);
      for (const entry of row) {
        this.key(entry, x, top + at * line, box.right - x - KEY);
        x += KEY + width(entry.one.name) + 14;
      }
    });
    if (legend === 'bottom') box.bottom -= high + 4;
    else box.top += high + 4;
  }

  private key(
    { kind, one }: { readonly kind: ReadPlot['kind']; readonly one: ReadSeries },
    x: number,
    y: number,
    room: number,
  ): void {
    const middle = y + SMALL.pixels * 0.62;
    if (isFilled(kind))
      this.out.push(element('rect', { x: x + 5, y: middle - 4, width: 8, height: 8, fill: one.color }));
    else {
      if (one.line > 0)
        this.out.push(
          element('path', {
            d: `M${x} ${middle}h${KEY - 5}`,
            stroke: one.color,
            'stroke-width': one.line,
            'stroke-dasharray': one.dashed ? '5 4' : undefined,
          }),
        );
      if (one.marker) this.out.push(markerAt(one.marker, { x: x + (KEY - 5) / 2, y: middle }));
    }
    this.text(shortened(one.name, room), x + KEY, middle + SMALL.pixels * 0.35, 'start');
  }

  private sideTitle(title: string, side: 'left' | 'right'): void {
    if (title === '') return;
    const { box } = this;
    const line = SMALL.pixels * LINE_HEIGHT;
    const x = side === 'left' ? box.left + SMALL.pixels * 0.85 : box.right - 3;
    const y = (box.top + box.bottom) / 2;
    this.text(title, x, y, 'middle', { transform: `rotate(-90 ${x} ${y})` });
    if (side === 'left') box.left += line + 2;
    else box.right -= line + 2;
  }

  private bottomTitle(title: string): void {
    if (title === '') return;
    const { box } = this;
    this.text(title, (box.left + box.right) / 2, box.bottom - 2, 'middle');
    box.bottom -= SMALL.pixels * LINE_HEIGHT + 2;
  }

  private along(): Along {
    const { plots, along } = this.chart;
    const series = plots.flatMap((plot) => plot.series);
    if (plots.some(({ kind }) => kind === 'scatter')) {
      const given = series.flatMap((one) =>
        one.values.flatMap((value, at) => {
          const place = one.along?.[at];
          return value === null ? [] : typeof place === 'number' ? [place] : [at + 1];
        }),
      );
      return {
        scale: scaleOf(given, along, Math.max(2, (this.box.right - this.box.left) / STEP.along), false),
      };
    }
    const named = series.find((one) => one.along && one.along.length > 0);
    const count = Math.max(0, ...series.map(({ values }) => values.length));
    const format = along.numberFormat ?? named?.alongFormat;
    const names = Array.from({ length: count }, (_, at) => {
      const name = named ? (named.along?.[at] ?? null) : at + 1;
      return typeof name === 'number' ? this.number(name, format) : (name ?? '');
    });
    return { names, reversed: along.reversed };
  }

  private valueScale(axis: ReadAxis, second: boolean): Scale {
    const plots = this.chart.plots.filter((plot) => plot.second === second);
    const values = plots.flatMap((plot) =>
      stacked(plot).flatMap((line) => line.flatMap((one) => (one === null ? [] : [one.to]))),
    );
    const isBars = plots.some(({ kind }) => isFilled(kind));
    const isShare = plots.some(({ grouping }) => grouping === 'percentStacked');
    const room = this.lies
      ? (this.box.right - this.box.left) / STEP.along
      : (this.box.bottom - this.box.top) / STEP.up;
    return scaleOf(values, isShare ? { most: 1, ...axis } : axis, Math.max(2, room), isBars);
  }

  private labels({ ticks }: Scale, { numberFormat }: ReadAxis, second: boolean): string[] {
    const plots = this.chart.plots.filter((plot) => plot.second === second);
    const percent = plots.some(({ grouping }) => grouping === 'percentStacked') ? '0%' : undefined;
    const own = plots.flatMap(({ series }) => series.map(({ valuesFormat }) => valuesFormat));
    const format = numberFormat ?? percent ?? own.find((one) => one !== undefined);
    return ticks.map((tick) => this.number(tick, format));
  }

  private alongLabels(along: Along): string[] {
    if ('names' in along) return along.names.map((name) => shortened(name, width('n'.repeat(MOST_LETTERS))));
    const own = this.chart.plots.flatMap(({ series }) => series.map(({ alongFormat }) => alongFormat));
    const format = this.chart.along.numberFormat ?? own.find((one) => one !== undefined);
    return along.scale.ticks.map((tick) => this.number(tick, format));
  }

  private number(value: number, format: string | undefined): string {
    return format === undefined
      ? numberText(value)
      : shownText(value, format, () => true, this.date1904).text.trim();
  }

  /** Names that do not fit beside each other are slanted; numbers are thinned out instead. */
  private bottomLabels(
    labels: readonly string[],
    along: Along,
  ): { readonly height: number; readonly slanted: boolean } {
    const line = SMALL.pixels * LINE_HEIGHT + TICK;
    const slot = (this.box.right - this.box.left) / Math.max(1, labels.length);
    const areNames = !this.lies && 'names' in along && labels.some((one) => !Number.isFinite(Number(one)));
    const slanted = areNames && widest(labels) > slot * 0.95;
    const reach = Math.min(widest(labels) * SLANT + SMALL.pixels, (this.box.bottom - this.box.top) / 2);
    return { height: slanted ? reach + TICK : line, slanted };
  }

  private up = (scale: Scale, value: number): number =>
    this.box.bottom - scale.at(value) * (this.box.bottom - this.box.top);

  private over = (scale: Scale, value: number): number =>
    this.box.left + scale.at(value) * (this.box.right - this.box.left);

  private measured(scale: Scale, value: number): number {
    return this.lies ? this.over(scale, value) : this.up(scale, value);
  }

  private slot({ names }: { readonly names: readonly string[] }): number {
    const { left, right, top, bottom } = this.box;
    return (this.lies ? bottom - top : right - left) / Math.max(1, names.length);
  }

  /** The middle of a place along the first axis. */
  private place(along: Along, at: number, value: number): number {
    if ('scale' in along) return this.over(along.scale, value);
    const slot = this.slot(along);
    const { left, right, top, bottom } = this.box;
    const shift = (at + 0.5) * slot;
    if (this.lies) return along.reversed ? top + shift : bottom - shift;
    return along.reversed ? right - shift : left + shift;
  }

  private grid(scale: Scale, axis: ReadAxis): void {
    const { left, right, top, bottom } = this.box;
    if (!axis.gridlines) return;
    for (const tick of scale.ticks) {
      const at = this.measured(scale, tick);
      const d = this.lies ? `M${at} ${top}V${bottom}` : `M${left} ${at}H${right}`;
      this.out.push(element('path', { d, stroke: RULE, 'stroke-width': 0.8, fill: 'none' }));
    }
  }

  private plots(along: Along, first: Scale, other: Scale | undefined): void {
    for (const plot of this.chart.plots) {
      const scale = plot.second && other ? other : first;
      const base = Math.min(Math.max(0, scale.least), scale.most);
      const places: Places = {
        along: (at, value) => this.place(along, at, value),
        value: (value) => this.measured(scale, clamped(value, scale)),
        slot: 'names' in along ? this.slot(along) : 0,
        zero: this.measured(scale, base),
        lies: this.lies,
        backwards: this.lies !== this.chart.along.reversed,
      };
      this.out.push(MARKS[plot.kind](plot, places));
      for (const { series, value, x, y, anchor } of valueLabels(plot, places))
        this.text(this.number(value, series.labels?.numberFormat ?? series.valuesFormat), x, y, anchor);
    }
  }

  private axisLines(along: Along, scale: Scale): void {
    const { left, right, top, bottom } = this.box;
    const zero = this.measured(scale, Math.min(Math.max(0, scale.least), scale.most));
    const d = this.lies ? `M${zero} ${top}V${bottom}` : `M${left} ${zero}H${right}`;
    this.out.push(element('path', { d, stroke: '#A0A0A0', fill: 'none' }));
    if ('scale' in along)
      this.out.push(element('path', { d: `M${left} ${top}V${bottom}`, stroke: '#A0A0A0', fill: 'none' }));
  }

  private drawSide(labels: readonly string[], along: Along, scale: Scale, axis: ReadAxis): void {
    if (!axis.shown) return;
    const gaps =
      this.lies && 'names' in along ? thinned(labels.length, this.slot(along), SMALL.pixels * 1.1) : 1;
    labels.forEach((label, at) => {
      if (at % gaps !== 0) return;
      const y = this.lies ? this.place(along, at, at) : this.up(scale, scale.ticks[at] ?? 0);
      this.text(label, this.box.left - TICK - 2, y + SMALL.pixels * 0.35, 'end');
    });
  }

  private drawBottom(labels: readonly string[], along: Along, scale: Scale, slanted: boolean): void {
    const y = this.box.bottom + TICK + SMALL.pixels;
    const ofValues = this.lies ? scale : 'scale' in along ? along.scale : undefined;
    const slot = ofValues
      ? (this.box.right - this.box.left) / Math.max(1, labels.length - 1)
      : (this.box.right - this.box.left) / Math.max(1, labels.length);
    const gaps = thinned(labels.length, slot, slanted ? SMALL.pixels * 1.2 : widest(labels) + 6);
    labels.forEach((label, at) => {
      if (at % gaps !== 0) return;
      const x = ofValues ? this.over(ofValues, ofValues.ticks[at] ?? 0) : this.place(along, at, at);
      if (!slanted) this.text(label, x, y, 'middle');
      else
        this.text(label, x + 3, y - SMALL.pixels * 0.3, 'end', {
          transform: `rotate(-45 ${x + 3} ${y - SMALL.pixels * 0.3})`,
        });
    });
  }

  private drawSecond(scale: Scale, axis: ReadAxis): void {
    if (!axis.shown) return;
    this.labels(scale, axis, true).forEach((label, at) => {
      const y = this.up(scale, scale.ticks[at] ?? 0);
      this.text(label, this.box.right + TICK, y + SMALL.pixels * 0.35, 'start');
    });
  }

  private text(
    text: string,
    x: number,
    y: number,
    anchor: 'start' | 'middle' | 'end',
    more: Readonly<Record<string, string | number>> = {},
  ): void {
    this.out.push(
      words(text, { x, y, 'text-anchor': anchor, 'font-size': SMALL.pixels, fill: INK, ...more }),
    );
  }
}

/** A value beyond a scale that the author has fixed ends at its edge. */
const clamped = (value: number, { least, most }: Scale): number =>
  Math.min(Math.max(value, Math.min(least, most)), Math.max(least, most));

const widest = (labels: readonly string[]): number =>
  labels.reduce((most, label) => Math.max(most, width(label)), 0);

/** Every so many labels one is shown. */
const thinned = (count: number, slot: number, needed: number): number =>
  count === 0 || slot <= 0 ? 1 : Math.max(1, Math.ceil(needed / slot));

function shortened(text: string, room: number): string {
  if (width(text) <= room) return text;
  let kept = text;
  while (kept.length > 1 && width(`${kept}…`) > room) kept = kept.slice(0, -1);
  return `${kept}…`;
}

/** Axes of charts: from where to where, in which steps, and where a value comes to lie. */
import type { Axis as AxisOfFile } from '../../package/drawings/model';

type Axis = Omit<AxisOfFile, 'title'>;

export interface Scale {
  readonly least: number;
  readonly most: number;
  readonly ticks: readonly number[];
  /** 0 at the axis' begin, 1 at its end. */
  readonly at: (value: number) => number;
}

/** Of the largest value: values that spread less are shown without 0 in the picture, as spreadsheets do. */
const SPREAD = 1 / 6;
/** Of the spread: room above the largest value. */
const HEADROOM = 0.05;
const FLAT = 1e-9;
const MOST_TICKS = 200;

export function scaleOf(values: readonly number[], axis: Axis, about: number, fromZero: boolean): Scale {
  if (axis.log !== undefined) return logScale(values, axis, axis.log);
  const [smallest, largest] = extent(values);
  // What rounding leaves of equal values is no shape.
  const isFlat = largest - smallest <= FLAT * Math.max(Math.abs(smallest), Math.abs(largest));
  const [low, high] = isFlat ? [smallest, smallest] : [smallest, largest];
  const spread = high - low;
  const holdsZero = fromZero || (low <= 0 && high >= 0);
  const isNear = (near: number, far: number): boolean => !fromZero && far - near < far * SPREAD;
  const lowest = low >= 0 ? (isNear(low, high) ? low - spread / 2 : 0) : low - spread * HEADROOM;
  const highest = high <= 0 ? (isNear(-high, -low) ? high + spread / 2 : 0) : high + spread * HEADROOM;
  const from = axis.least ?? (holdsZero ? Math.min(0, lowest) : lowest);
  const to = Math.max(axis.most ?? (holdsZero ? Math.max(0, highest) : highest), from);
  const end = to > from ? to : from + (Math.abs(from) || 1);
  const wanted = axis.step ?? niceStep((end - from) / about);
  const step = (end - from) / wanted > MOST_TICKS ? niceStep((end - from) / about) : wanted;
  const least = axis.least ?? Math.floor(from / step + 1e-9) * step;
  const most = axis.most ?? Math.ceil(end / step - 1e-9) * step;
  const count = Math.floor((most - least) / step + 1e-9);
  const ticks = Array.from({ length: count + 1 }, (_, at) => tidy(least + at * step, step));
  return { least, most, ticks, at: placed(axis, (value) => (value - least) / (most - least || 1)) };
}

function logScale(values: readonly number[], axis: Axis, base: number): Scale {
  const [low, high] = extent(values.filter((value) => value > 0));
  const power = (value: number): number => Math.log(value) / Math.log(base);
  const first = Math.floor(power(positive(axis.least) ?? positive(low) ?? 1) + 1e-9);
  const last = Math.max(first + 1, Math.ceil(power(positive(axis.most) ?? positive(high) ?? base) - 1e-9));
  const ticks = Array.from(
    { length: Math.min(MOST_TICKS, last - first + 1) },
    (_, at) => base ** (first + at),
  );
  return {
    least: base ** first,
    most: base ** last,
    ticks,
    at: placed(axis, (value) => (value > 0 ? (power(value) - first) / (last - first) : NaN)),
  };
}

const placed = ({ reversed }: Axis, at: (value: number) => number): ((value: number) => number) =>
  reversed ? (value) => 1 - at(value) : at;

const positive = (value: number | undefined): number | undefined =>
  value !== undefined && value > 0 ? value : undefined;

function extent(values: readonly number[]): [low: number, high: number] {
  let low = Infinity;
  let high = -Infinity;
  for (const value of values) {
    if (value < low) low = value;
    if (value > high) high = value;
  }
  return low <= high ? [low, high] : [0, 1];
}

/** 1, 2 or 5 and tenfold. */
function niceStep(rough: number): number {
  const power = 10 ** Math.floor(Math.log10(rough));
  const lead = rough / power;
  return power * (lead <= 1 ? 1 : lead <= 2 ? 2 : lead <= 5 ? 5 : 10);
}

/** Without the dust of adding steps up. */
function tidy(value: number, step: number): number {
  const decimals = Math.max(0, 3 - Math.floor(Math.log10(step)));
  return decimals > 15 ? value : Number(value.toFixed(Math.min(15, decimals)));
}

/** A chart part as a chart (ECMA-376 part 1, 21.2). */
import type { Theme } from '../colors';
import { child, childrenOf, decodeText, descendants, flag, numeric, type XmlElement } from '../xml';
import { accent, fillColor, hasNoFill } from './drawingColor';
import {
  EMU,
  type Axis,
  type Chart,
  type Plot,
  type PlotKind,
  type Series,
  type Values,
  type Words,
} from './model';

export const DEFAULT_GAP = 150;
const DEFAULT_LINE = 2.4;
const DEFAULT_MARKER = 5;
/** A file may claim a cache of any length. */
const MOST_POINTS = 100_000;
/** Pixels of a point. */
const POINT = 96 / 72;

const LEGEND: Readonly<Record<string, Chart['legend']>> = {
  r: 'right',
  tr: 'right',
  l: 'left',
  t: 'top',
  b: 'bottom',
};

/** What other kinds of charts are called. */
const OTHERS: Readonly<Record<string, string>> = {
  pieChart: 'pie chart',
  ofPieChart: 'pie chart',
  doughnutChart: 'doughnut chart',
  radarChart: 'radar chart',
  stockChart: 'stock chart',
  bubbleChart: 'bubble chart',
  surfaceChart: 'surface chart',
};

const valueOf = (element: XmlElement | undefined, name: string): string | undefined =>
  child(element, name)?.attributes['val'];

export function readChart(root: XmlElement, theme: Theme): Chart {
  const chart = child(root, 'chart');
  const area = child(chart, 'plotArea');
  const kinds = (area?.children ?? []).filter(({ name }) => /Chart$/.test(name));
  const axes = axesOf(area);
  const [first] = kinds;
  const [along, values] = axesUsed(first, axes);
  const others = kinds.flatMap((one) => otherKind(one) ?? []);
  const plots = kinds.flatMap((one): Plot[] => {
    const kind = kindOf(one);
    return kind === undefined ? [] : [readPlot(one, kind, axesUsed(one, axes)[1] !== values, theme)];
  });
  const second = kinds.map((one) => axesUsed(one, axes)[1]).find((axis) => axis !== values);
  const place = valueOf(child(chart, 'legend'), 'legendPos') ?? 'r';
  const lies = plots.map(({ kind }) => kind === 'bar');
  const mixed = lies.includes(true) && lies.includes(false) ? ['bars that lie and others in one chart'] : [];
  const notDrawn = [...others, ...mixed].join(' and ');
  const background = fillColor(child(root, 'spPr'), theme);
  const title = titleOf(chart);
  const leftOut = leftOutOf(kinds);
  return {
    ...(title && { title }),
    plots,
    along: readAxis(along),
    values: readAxis(values),
    ...(second && { second: readAxis(second) }),
    ...(child(chart, 'legend') && { legend: LEGEND[place] ?? 'right' }),
    ...(leftOut.length > 0 && { leftOut }),
    onlyVisible: flag(valueOf(chart, 'plotVisOnly'), true),
    ...(background !== undefined && !hasNoFill(child(root, 'spPr')) && { background }),
    ...((notDrawn !== '' || plots.length === 0) && { notDrawn: notDrawn || 'chart without a plot' }),
  };
}

/** Parts of a series that are not drawn, each once, in words. */
const PARTS: readonly (readonly [name: string, words: string])[] = [
  ['trendline', 'trend lines'],
  ['errBars', 'error bars'],
  ['upDownBars', 'bars between lines'],
  ['hiLowLines', 'lines from high to low'],
  ['dropLines', 'drop lines'],
];

/** Labels are drawn where each is its value, in its own place. */
const OTHER_LABELS = ['showCatName', 'showSerName', 'showPercent', 'showBubbleSize'];

function leftOutOf(kinds: readonly XmlElement[]): string[] {
  const parts = PARTS.flatMap(([name, words]) =>
    kinds.some((one) => descendants(one, name).length > 0) ? [words] : [],
  );
  const hasOtherLabels = kinds
    .flatMap((one) => [...descendants(one, 'dLbls'), ...descendants(one, 'dLbl')])
    .some(
      (labels) =>
        !flag(valueOf(labels, 'delete')) &&
        (child(labels, 'tx') !== undefined || OTHER_LABELS.some((name) => flag(valueOf(labels, name)))),
    );
  return hasOtherLabels ? [...parts, 'labels with other words than values'] : parts;
}

/** Those of the series before those of the whole chart. */
function labelsOf(series: XmlElement, chart: XmlElement): Series['labels'] {
  const labels = child(series, 'dLbls') ?? child(chart, 'dLbls');
  if (!labels || flag(valueOf(labels, 'delete')) || !flag(valueOf(labels, 'showVal'))) return undefined;
  const format = child(labels, 'numFmt')?.attributes;
  const code = format?.['formatCode'];
  return code === undefined || flag(format?.['sourceLinked']) || code === 'General'
    ? {}
    : { numberFormat: code };
}

function kindOf(element: XmlElement): PlotKind | undefined {
  switch (element.name) {
    case 'lineChart':
      return 'line';
    case 'areaChart':
      return 'area';
    case 'scatterChart':
      return 'scatter';
    case 'barChart':
      return valueOf(element, 'barDir') === 'bar' ? 'bar' : 'column';
    default:
      return undefined;
  }
}

function otherKind(element: XmlElement): string | undefined {
  if (kindOf(element) !== undefined) return undefined;
  if (element.name.includes('3D')) return 'chart in three dimensions';
  return OTHERS[element.name] ?? 'chart of another kind';
}

type Axes = ReadonlyMap<string, XmlElement>;

const axesOf = (area: XmlElement | undefined): Axes =>
  new Map(
    (area?.children ?? [])
      .filter(({ name }) => /Ax$/.test(name))
      .map((axis) => [valueOf(axis, 'axId') ?? '', axis]),
  );

/** The axis that a chart's values are placed along, and the one that they are measured by. */
function axesUsed(
  chart: XmlElement | undefined,
  axes: Axes,
): [XmlElement | undefined, XmlElement | undefined] {
  const used = childrenOf(chart, 'axId').flatMap((one) => axes.get(one.attributes['val'] ?? '') ?? []);
  if (chart?.name !== 'scatterChart') {
    const values = used.find(({ name }) => name === 'valAx');
    return [used.find((axis) => axis !== values), values];
  }
  const lies = used.find((axis) => ['b', 't'].includes(valueOf(axis, 'axPos') ?? ''));
  return [lies ?? used[0], used.find((axis) => axis !== (lies ?? used[0]))];
}

function readPlot(element: XmlElement, kind: PlotKind, second: boolean, theme: Theme): Plot {
  const grouping = valueOf(element, 'grouping');
  const stacked = grouping === 'stacked' || grouping === 'percentStacked';
  return {
    kind,
    grouping: stacked ? grouping : 'clustered',
    gap: numeric(valueOf(element, 'gapWidth'), DEFAULT_GAP),
    overlap: numeric(valueOf(element, 'overlap'), stacked ? 100 : 0),
    second,
    series: childrenOf(element, 'ser').map((one, at) => readSeries(one, at, kind, element, theme)),
  };
}

function readSeries(
  element: XmlElement,
  at: number,
  kind: PlotKind,
  chart: XmlElement,
  theme: Theme,
): Series {
  const look = child(element, 'spPr');
  const line = child(look, 'ln');
  const own = accent(numeric(valueOf(element, 'idx'), at), theme);
  const isBars = kind === 'column' || kind === 'bar' || kind === 'area';
  const color = (isBars ? fillColor(look, theme) : fillColor(line, theme)) ?? own;
  const name = wordsOf(child(element, 'tx'));
  const along = valuesOf(child(element, kind === 'scatter' ? 'xVal' : 'cat'));
  const width = numeric(line?.attributes['w'], DEFAULT_LINE * EMU) / EMU;
  const dash = valueOf(line, 'prstDash');
  const marker = isBars ? undefined : markerOf(element, kind, chart, color, theme);
  const labels = labelsOf(element, chart);
  const style = valueOf(chart, 'scatterStyle');
  const joined = !hasNoFill(line) && !(kind === 'scatter' && !line && style === 'marker');
  return {
    ...(name && { name }),
    ...(along && { along }),
    values: valuesOf(child(element, kind === 'scatter' ? 'yVal' : 'val')) ?? { cached: [] },
    color,
    line: isBars || !joined ? 0 : width,
    dashed: dash !== undefined && dash !== 'solid',
    ...(marker && { marker }),
    ...(labels && { labels }),
  };
}

function markerOf(
  element: XmlElement,
  kind: PlotKind,
  chart: XmlElement,
  color: string,
  theme: Theme,
): Series['marker'] {
  const marker = child(element, 'marker');
  const symbol = valueOf(marker, 'symbol');
  const isShown = kind === 'scatter' || flag(valueOf(chart, 'marker'), child(chart, 'marker') !== undefined);
  if (symbol === 'none' || (!isShown && symbol === undefined)) return undefined;
  return {
    shape: symbol ?? 'circle',
    size: numeric(valueOf(marker, 'size'), DEFAULT_MARKER) * POINT,
    color: fillColor(child(marker, 'spPr'), theme) ?? color,
  };
}

function readAxis(axis: XmlElement | undefined): Axis {
  const scaling = child(axis, 'scaling');
  const number = (element: XmlElement | undefined, name: string): number | undefined => {
    const value = numeric(valueOf(element, name), NaN);
    return Number.isFinite(value) ? value : undefined;
  };
  const [title, least, most, step, log] = [
    titleOf(axis),
    number(scaling, 'min'),
    number(scaling, 'max'),
    number(axis, 'majorUnit'),
    number(scaling, 'logBase'),
  ];
  const format = child(axis, 'numFmt')?.attributes;
  return {
    ...(title && { title }),
    ...(least !== undefined && { least }),
    ...(most !== undefined && { most }),
    ...(step !== undefined && step > 0 && { step }),
    ...(log !== undefined && log > 1 && { log }),
    reversed: valueOf(scaling, 'orientation') === 'maxMin',
    shown: axis !== undefined && !flag(valueOf(axis, 'delete')) && valueOf(axis, 'tickLblPos') !== 'none',
    gridlines: child(axis, 'majorGridlines') !== undefined,
    ...(format?.['formatCode'] !== undefined &&
      !flag(format['sourceLinked']) &&
      format['formatCode'] !== 'General' && { numberFormat: format['formatCode'] }),
  };
}

const titleOf = (holder: XmlElement | undefined): Words | undefined =>
  wordsOf(child(child(holder, 'title'), 'tx'));

/** A text that stands in the chart or in a cell. */
function wordsOf(element: XmlElement | undefined): Words | undefined {
  const plain = child(element, 'v');
  if (plain) return { text: decodeText(plain.text) };
  const rich = child(element, 'rich');
  if (rich) {
    const lines = childrenOf(rich, 'p').map((line) =>
      descendants(line, 't')
        .map(({ text }) => decodeText(text))
        .join(''),
    );
    return { text: lines.join(' ') };
  }
  const values = valuesOf(element);
  if (!values) return undefined;
  const text = values.cached.filter((one) => one !== null).join(' ');
  return { text, ...(values.reference !== undefined && { reference: values.reference }) };
}

function valuesOf(element: XmlElement | undefined): Values | undefined {
  const source = element?.children.find(({ name }) => /^(?:num|str|multiLvlStr)(?:Ref|Lit)$/.test(name));
  if (!source) return undefined;
  const reference = child(source, 'f')?.text.trim();
  const cache = source.children.find(({ name }) => name.endsWith('Cache')) ?? source;
  // Of several levels of words the first is the one beside the values.
  const level = child(cache, 'lvl') ?? cache;
  const isText = source.name !== 'numRef' && source.name !== 'numLit';
  const count = Math.min(MOST_POINTS, numeric(valueOf(cache, 'ptCount'), 0));
  const cached = Array.from({ length: Math.max(0, count) }, (): number | string | null => null);
  for (const point of childrenOf(level, 'pt')) {
    const at = numeric(point.attributes['idx'], -1);
    const text = child(point, 'v')?.text ?? '';
    const number = numeric(text, NaN);
    if (at >= 0 && at < count) cached[at] = isText ? decodeText(text) : Number.isNaN(number) ? null : number;
  }
  const format = decodeText(child(cache, 'formatCode')?.text ?? '');
  return {
    cached,
    ...(reference !== undefined && reference !== '' && { reference }),
    ...(format !== '' && format !== 'General' && { numberFormat: format }),
  };
}

/** A chart as XML, its elements in the order that ECMA-376 part 1, 21.2.2 asks for. */
import { encodeText, escapeXml } from '../xml';
import type { Theme } from '../colors';
import { accent } from './drawingColor';
import { DEFAULT_GAP } from './readChart';
import type { PlotKind } from './model';

type WrittenKind = Exclude<PlotKind, 'area'>;

/** A text of its own, or the one cell that holds it. */
export type WordsDescription = string | { readonly cell: string };

export interface ChartDescription {
  readonly kind: WrittenKind;
  readonly title: string;
  /** What the axes show, with the unit: `Draft (deg)`. */
  readonly alongTitle: string;
  readonly valuesTitle: string;
  /** The cells that it covers: `F2:M20`. */
  readonly over: string;
  readonly series: readonly SeriesDescription[];
}

export interface SeriesDescription {
  readonly name: WordsDescription;
  /** Cells as a formula names them: `'What if'!$A$8:$A$18`. */
  readonly along: string;
  readonly values: string;
  /** `#RRGGBB`; the colors of the workbook's theme unless told. */
  readonly color?: string;
}

/** What cells hold, for programs that draw before they calculate. */
export type Cached = (reference: string) => readonly (number | string | null)[];

/** The workbook around the chart. */
export interface ChartSurroundings {
  readonly cached: Cached;
  /** Absent where the file has no theme: its names would be no colors then. */
  readonly theme?: Theme;
}

const CHART = 'http://schemas.openxmlformats.org/drawingml/2006/chart';
const DRAWING = 'http://schemas.openxmlformats.org/drawingml/2006/main';
/** Or Excel draws a line past a point that is #N/A, from its neighbor to the next. */
const NA_IS_BLANK =
  '<c:extLst><c:ext uri="{56B9EC1D-385E-4148-901F-78D8002777C0}" ' +
  'xmlns:c16r3="http://schemas.microsoft.com/office/drawing/2017/03/chart"><c16r3:dataDisplayOptions16>' +
  '<c16r3:dispNaAsBlank val="1"/></c16r3:dataDisplayOptions16></c:ext></c:extLst>';
const ACCENTS = 6;
const GRAY = '<a:solidFill><a:srgbClr val="D9D9D9"/></a:solidFill>';
/** Of lines; 12700 are a point. */
const LINE = 22225;
const ALONG = 1;
const VALUES = 2;

export function chartXml(chart: ChartDescription, around: ChartSurroundings): string {
  return [
    `<c:chartSpace xmlns:c="${CHART}" xmlns:a="${DRAWING}">`,
    '<c:roundedCorners val="0"/><c:chart>',
    title(chart.title, 1200, true),
    '<c:autoTitleDeleted val="0"/><c:plotArea><c:layout/>',
    plot(chart, around),
    axes(chart),
    '</c:plotArea>',
    chart.series.length > 1 ? '<c:legend><c:legendPos val="b"/><c:overlay val="0"/></c:legend>' : '',
    '<c:plotVisOnly val="1"/><c:dispBlanksAs val="gap"/>',
    NA_IS_BLANK,
    '</c:chart>',
    '<c:spPr><a:solidFill><a:srgbClr val="FFFFFF"/></a:solidFill>',
    `<a:ln w="9525">${GRAY}</a:ln></c:spPr>`,
    '</c:chartSpace>',
  ].join('');
}

function title(text: string, size: number, bold: boolean): string {
  if (text === '') return '';
  const look = `<a:defRPr sz="${size}" b="${bold ? 1 : 0}"/>`;
  return (
    `<c:title><c:tx><c:rich><a:bodyPr/><a:lstStyle/><a:p><a:pPr>${look}</a:pPr>` +
    `<a:r><a:rPr lang="en-US" sz="${size}" b="${bold ? 1 : 0}"/><a:t>${encodeText(text)}</a:t></a:r></a:p></c:rich></c:tx><c:overlay val="0"/></c:title>`
  );
}

const ids = `<c:axId val="${ALONG}"/><c:axId val="${VALUES}"/>`;

function plot({ kind, series }: ChartDescription, around: ChartSurroundings): string {
  const all = series.map((one, at) => seriesXml(one, at, kind, around)).join('');
  switch (kind) {
    case 'scatter':
      return `<c:scatterChart><c:scatterStyle val="lineMarker"/><c:varyColors val="0"/>${all}${ids}</c:scatterChart>`;
    case 'line':
      return `<c:lineChart><c:grouping val="standard"/><c:varyColors val="0"/>${all}<c:marker val="1"/>${ids}</c:lineChart>`;
    default:
      return (
        `<c:barChart><c:barDir val="${kind === 'bar' ? 'bar' : 'col'}"/><c:grouping val="clustered"/>` +
        `<c:varyColors val="0"/>${all}<c:gapWidth val="${DEFAULT_GAP}"/>${ids}</c:barChart>`
      );
  }
}

function seriesXml(
  { name, along, values, color }: SeriesDescription,
  at: number,
  kind: WrittenKind,
  { cached, theme }: ChartSurroundings,
): string {
  const named =
    color === undefined && theme
      ? `<a:schemeClr val="accent${(at % ACCENTS) + 1}"/>`
      : `<a:srgbClr val="${(color ?? accent(at)).slice(1).toUpperCase()}"/>`;
  const fill = `<a:solidFill>${named}</a:solidFill>`;
  const isBars = kind === 'column' || kind === 'bar';
  const look = isBars ? fill : `<a:ln w="${LINE}" cap="rnd">${fill}<a:round/></a:ln>`;
  const marker = `<c:marker><c:symbol val="circle"/><c:size val="5"/><c:spPr>${fill}<a:ln w="9525">${fill}</a:ln></c:spPr></c:marker>`;
  const isScatter = kind === 'scatter';
  return [
    `<c:ser><c:idx val="${at}"/><c:order val="${at}"/>`,
    `<c:tx>${typeof name === 'string' ? `<c:v>${encodeText(name)}</c:v>` : strings(name.cell, cached)}</c:tx>`,
    `<c:spPr>${look}</c:spPr>`,
    isBars ? '<c:invertIfNegative val="0"/>' : marker,
    `<c:${isScatter ? 'xVal' : 'cat'}>${cells(along, cached)}</c:${isScatter ? 'xVal' : 'cat'}>`,
    `<c:${isScatter ? 'yVal' : 'val'}>${numbers(values, cached)}</c:${isScatter ? 'yVal' : 'val'}>`,
    isBars ? '' : '<c:smooth val="0"/>',
    '</c:ser>',
  ].join('');
}

const cells = (reference: string, cached: Cached): string =>
  cached(reference).some((value) => typeof value === 'string')
    ? strings(reference, cached)
    : numbers(reference, cached);

function numbers(reference: string, cached: Cached): string {
  const values = cached(reference);
  const points = values.map((value, at) =>
    typeof value === 'number' ? `<c:pt idx="${at}"><c:v>${value}</c:v></c:pt>` : '',
  );
  return `<c:numRef><c:f>${escapeXml(reference)}</c:f><c:numCache><c:formatCode>General</c:formatCode><c:ptCount val="${values.length}"/>${points.join('')}</c:numCache></c:numRef>`;
}

function strings(reference: string, cached: Cached): string {
  const values = cached(reference);
  const points = values.map((value, at) =>
    value === null ? '' : `<c:pt idx="${at}"><c:v>${encodeText(String(value))}</c:v></c:pt>`,
  );
  return `<c:strRef><c:f>${escapeXml(reference)}</c:f><c:strCache><c:ptCount val="${values.length}"/>${points.join('')}</c:strCache></c:strRef>`;
}

function axes({ kind, alongTitle, valuesTitle }: ChartDescription): string {
  const lies = kind === 'bar';
  const axis = (id: number, other: number, position: string, heading: string, lines: boolean): string =>
    [
      `<c:axId val="${id}"/><c:scaling><c:orientation val="${lies && id === ALONG ? 'maxMin' : 'minMax'}"/></c:scaling><c:delete val="0"/>`,
      `<c:axPos val="${position}"/>`,
      lines ? `<c:majorGridlines><c:spPr><a:ln w="9525">${GRAY}</a:ln></c:spPr></c:majorGridlines>` : '',
      title(heading, 1000, false),
      '<c:numFmt formatCode="General" sourceLinked="0"/><c:majorTickMark val="out"/><c:minorTickMark val="none"/>',
      // Beside the plot also where a scale runs below 0; below it where places run from the top.
      `<c:tickLblPos val="${lies && id === VALUES ? 'high' : 'low'}"/>`,
      `<c:crossAx val="${other}"/><c:crosses val="${lies && id === VALUES ? 'max' : 'autoZero'}"/>`,
    ].join('');
  const along = axis(ALONG, VALUES, lies ? 'l' : 'b', alongTitle, kind === 'scatter');
  const values = axis(VALUES, ALONG, lies ? 'b' : 'l', valuesTitle, true);
  return kind === 'scatter'
    ? `<c:valAx>${along}<c:crossBetween val="midCat"/></c:valAx><c:valAx>${values}<c:crossBetween val="midCat"/></c:valAx>`
    : `<c:catAx>${along}<c:auto val="1"/><c:lblAlgn val="ctr"/><c:lblOffset val="100"/><c:noMultiLvlLbl val="0"/></c:catAx><c:valAx>${values}<c:crossBetween val="between"/></c:valAx>`;
}

import { describe, expect, it } from 'vitest';
import type { Matrix } from '../../src/cells/value';
import { CellError } from '../../src/cells/value';
import { readWorkbook } from '../../src/package';
import { addCharts, newWorkbook } from '../../src/package/author';
import type { ChartDescription } from '../../src/package/drawings/writeChart';
import { readChart } from '../../src/package/drawings/readChart';
import { drawingsOf } from '../../src/package/drawings/readDrawings';
import type { Workbook } from '../../src/package/model';
import { parseXml } from '../../src/package/xml';
import { chartSvg } from '../../src/render/drawings/chartSvg';
import { drawingSvg, placedDrawings } from '../../src/render/drawings/sheetDrawings';
import { lookWith } from '../../src/render/drawings/look';
import { scaleOf } from '../../src/render/drawings/scale';
import { printHtml } from '../../src/render/printPage';
import { pictured } from './pictured';

const CELLS = { A1: 'Draft', B1: 'Push', A2: 2, B2: 10, A3: 4, B3: 30, A4: 8, B4: 20 };

function charted(change: Partial<ChartDescription> = {}): Workbook {
  return addCharts(newWorkbook({ sheets: [{ name: 'Tried', cells: CELLS }] }), 'Tried', [
    {
      kind: 'column',
      title: 'Push by draft',
      alongTitle: 'Draft (deg)',
      valuesTitle: 'Push (N)',
      over: 'D2:K16',
      series: [{ name: { cell: 'Tried!$B$1' }, along: 'Tried!$A$2:$A$4', values: 'Tried!$B$2:$B$4' }],
      ...change,
    },
  ]);
}

function svgOf(workbook: Workbook, evaluate?: (formula: string) => Matrix): string {
  const sheet = workbook.sheets[0];
  if (!sheet) throw new Error('no sheet');
  const [one] = placedDrawings(workbook, sheet);
  if (!one) throw new Error('no drawing');
  return drawingSvg(workbook, one.drawing, one.box, evaluate ? { look: lookWith(evaluate) } : {});
}

/** Heights of the bars, which have a color and no border. */
const bars = (svg: string): number[] =>
  [...svg.matchAll(/<rect [^>]*height="([\d.]+)" fill="#4472C4"\/>/g)]
    .map(([, height]) => Number(height))
    .filter((height) => height !== 8);

describe('a chart drawn', () => {
  it('has bars as high as its values are', () => {
    const [a = 0, b = 0, c = 0] = bars(svgOf(charted()));
    expect(b / a).toBeCloseTo(3, 2);
    expect(c / a).toBeCloseTo(2, 2);
  });

  it('follows the calculation, not what the file remembers', () => {
    const values: Record<string, Matrix> = {
      'Tried!$B$2:$B$4': [[10], [5], [new CellError('#N/A', 'no such thread')]],
      'Tried!$A$2:$A$4': [['Low'], ['Mid'], ['Top']],
      'Tried!$B$1': [['Pull']],
    };
    const svg = svgOf(charted(), (formula) => values[formula] ?? []);
    const [a = 0, b = 0, ...more] = bars(svg);
    expect(a / b).toBeCloseTo(2, 2);
    expect(more).toEqual([]);
    expect(svg).toContain('>Mid</text>');
  });

  it('keeps the values of the file where a reference cannot be read', () => {
    const broken = svgOf(charted(), () => [[new CellError('#REF!', 'gone')]]);
    expect(bars(broken)).toEqual(bars(svgOf(charted())));
  });

  it('shows titles with units, escaped, and names itself to those who cannot see it', () => {
    const svg = svgOf(charted({ title: 'Push <N> & hold' }));
    for (const text of ['Push &lt;N&gt; &amp; hold', 'Draft (deg)', 'Push (N)']) expect(svg).toContain(text);
    expect(svg).toContain('aria-label="Push &lt;N&gt; &amp; hold"');
  });

  it('places the points of a scatter by their numbers', () => {
    const svg = svgOf(charted({ kind: 'scatter' }));
    const x = [...svg.matchAll(/<circle cx="([\d.]+)"/g)].map(([, at]) => Number(at));
    const [a = 0, b = 0, c = 0] = x;
    expect((c - b) / (b - a)).toBeCloseTo(2, 1);
  });

  it.each([
    ['from 0 where values spread', [10, 30], {}, [0, 10, 20, 30, 40]],
    ['near the values where they hardly differ', [100, 101], {}, [99.5, 100, 100.5, 101, 101.5]],
    ['below 0 too', [-4, 6], {}, [-5, 0, 5, 10]],
    ['where the author says', [1, 9], { least: 2, most: 8, step: 3 }, [2, 5, 8]],
    ['by powers', [3, 800], { log: 10 }, [1, 10, 100, 1000]],
    ['for one value alone', [0, 0], {}, [0, 0.5, 1]],
  ])('has a scale %s', (_, values, axis, ticks) => {
    const plain = { reversed: false, shown: true, gridlines: true };
    expect(scaleOf(values, { ...plain, ...axis }, 4, false).ticks).toEqual(ticks);
  });
});

describe('a chart of somebody else', () => {
  const C = 'http://schemas.openxmlformats.org/drawingml/2006/chart';
  const numbers = (...values: readonly number[]): string =>
    `<c:val><c:numLit><c:ptCount val="${values.length}"/>${values.map((value, at) => `<c:pt idx="${at}"><c:v>${value}</c:v></c:pt>`).join('')}</c:numLit></c:val>`;
  const drawn = (plot: string): string => {
    const text = `<c:chartSpace xmlns:c="${C}"><c:chart><c:plotArea>${plot}</c:plotArea></c:chart></c:chartSpace>`;
    return chartSvg(readChart(parseXml(text, 'chart'), []), { width: 400, height: 300 });
  };

  it('has its values at its bars and points, in their format', () => {
    const labels = '<c:dLbls><c:numFmt formatCode="0.00" sourceLinked="0"/><c:showVal val="1"/></c:dLbls>';
    const columns = drawn(
      `<c:barChart><c:barDir val="col"/><c:ser><c:idx val="0"/>${labels}${numbers(1, -2.5)}</c:ser></c:barChart>`,
    );
    expect(columns).toContain('>1.00</text>');
    expect(columns).toContain('>-2.50</text>');
    expect(columns).not.toContain('Not drawn');
    expect(drawn(`<c:lineChart><c:ser>${numbers(7.25)}</c:ser>${labels}</c:lineChart>`)).toContain(
      '>7.25</text>',
    );
    expect(drawn(`<c:lineChart><c:ser>${numbers(7.25)}</c:ser></c:lineChart>`)).not.toContain('>7.25</text>');
  });

  it('says what is left out of it', () => {
    const more =
      '<c:trendline><c:trendlineType val="linear"/></c:trendline><c:errBars/><c:dLbls><c:showPercent val="1"/></c:dLbls>';
    expect(drawn(`<c:lineChart><c:ser>${more}${numbers(1, 2)}</c:ser></c:lineChart>`)).toContain(
      'Not drawn here: trend lines, error bars, labels with other words than values.',
    );
  });

  it('has areas that stand on each other', () => {
    const svg = drawn(
      `<c:areaChart><c:grouping val="stacked"/><c:ser><c:idx val="0"/>${numbers(1, 1)}</c:ser><c:ser><c:idx val="1"/>${numbers(2, 3)}</c:ser></c:areaChart>`,
    );
    const [lower = [], upper = []] = [...svg.matchAll(/<polygon points="([^"]+)"/g)].map(([, points = '']) =>
      points.split(' ').map((one) => one.split(',').map(Number)),
    );
    // The upper area begins where the lower one ends, its corners listed from right to left.
    expect(upper[2]).toEqual(lower[1]);
    expect(upper[3]).toEqual(lower[0]);
    const heights = [0, 1].map((at) => (lower[at]?.[1] ?? 0) - (upper[at]?.[1] ?? 0));
    expect((heights[1] ?? 0) / (heights[0] ?? 1)).toBeCloseTo(1.5, 1);
  });
});

describe('drawings of a file', () => {
  const workbook = readWorkbook(pictured(), []);

  it('are read with their places: pictures, charts of other kinds, words in boxes', () => {
    expect(drawingsOf(workbook, 'Main').map((one) => [one.shows, one.name])).toEqual([
      ['picture', 'Logo'],
      ['chart', 'Pie'],
      ['frame', 'Box'],
    ]);
  });

  it('name what is not drawn in words', () => {
    const sheet = workbook.sheets[0];
    const svgs = (sheet ? placedDrawings(workbook, sheet) : []).map(({ drawing, box }) =>
      drawingSvg(workbook, drawing, box, {}),
    );
    expect(svgs[0]).toContain('href="data:image/png;base64,iVBORw0K');
    expect(svgs[0]).toContain('aria-label="A dot"');
    expect(svgs[1]).toContain('Pie chart: not drawn here; it is kept in the file.');
    expect(svgs[2]).toContain('Mind the pinch point');
  });

  it('are printed where they stand, also beyond the last cell', () => {
    const html = printHtml(charted(), { file: 'a.xlsx', date: '2026-01-02' });
    expect(html).toMatch(/<tr [^>]*class="under">.*left:192px;top:0px.*<svg .*Push by draft.*<\/tr>/);
    expect(html.match(/<col /g)).toHaveLength(11);
  });
});

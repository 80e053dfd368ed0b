import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readWorkbook, saveWorkbook } from '../../src/package';
import { addCharts, newWorkbook } from '../../src/package/author';
import type { ChartDescription } from '../../src/package/drawings/writeChart';
import type { Chart } from '../../src/package/drawings/model';
import { drawingsOf } from '../../src/package/drawings/readDrawings';
import { changeStructure } from '../../src/package/structure';
import { knownFunctions } from '../../src/package/spelling';
import { hasOffice, recalculatedByOffice } from '../share/office';
import { hasOpenpyxl, PYTHON } from '../support/python';
import { textOf, unzip } from './packages';

const SHEET = "'What if: draft & push'";
const cells: Record<string, string | number> = { A1: 'Draft <deg>', B1: 'Push', C1: 'Hold' };
[3, 5, 7, 9].forEach((draft, at) => {
  cells[`A${at + 2}`] = draft;
  cells[`B${at + 2}`] = 100 / draft;
  cells[`C${at + 2}`] = -draft;
});
const plain = newWorkbook({ sheets: [{ name: 'What if - draft & push', cells }] });
const NAME = SHEET.replace(':', ' -').slice(1, -1);

const chart = (kind: ChartDescription['kind'], over: string): ChartDescription => ({
  kind,
  title: `Push by draft, a ${kind} & more`,
  alongTitle: 'Draft (deg)',
  valuesTitle: 'Push (N)',
  over,
  series: ['B', 'C'].map((column) => ({
    name: { cell: `'${NAME}'!$${column}$1` },
    along: `'${NAME}'!$A$2:$A$5`,
    values: `'${NAME}'!$${column}$2:$${column}$5`,
  })),
});
const KINDS = ['line', 'scatter', 'column', 'bar'] as const;
const charted = addCharts(
  plain,
  NAME,
  KINDS.map((kind, at) => chart(kind, `E${at * 20 + 1}:L${at * 20 + 18}`)),
);
const bytes = saveWorkbook(charted, []);

const chartsOf = (file: Uint8Array): Chart[] =>
  drawingsOf(readWorkbook(file, []), NAME).flatMap((one) => (one.shows === 'chart' ? [one.chart] : []));

function python(program: string, file: Uint8Array): string {
  const folder = mkdtempSync(join(tmpdir(), 'moldsheet-charts-'));
  try {
    writeFileSync(join(folder, 'in.xlsx'), file);
    const { stdout, stderr } = spawnSync(PYTHON, ['-c', program, join(folder, 'in.xlsx')], {
      encoding: 'utf8',
    });
    return stdout.trim() || stderr.trim();
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

describe('a chart written into a workbook', () => {
  it('reads back with titles, axes, references and the values of the cells', () => {
    const charts = chartsOf(bytes);
    expect(charts.map(({ plots }) => plots[0]?.kind)).toEqual([...KINDS]);
    for (const one of charts) {
      const [first, second] = one.plots[0]?.series ?? [];
      expect(one.title?.text).toMatch(/^Push by draft, a \w+ & more$/);
      expect(one.along.title?.text).toBe('Draft (deg)');
      expect(one.values.title?.text).toBe('Push (N)');
      expect(first?.name).toEqual({ text: 'Push', reference: `'${NAME}'!$B$1` });
      expect(first?.along).toMatchObject({ cached: [3, 5, 7, 9], reference: `'${NAME}'!$A$2:$A$5` });
      expect(second?.values.cached).toEqual([-3, -5, -7, -9]);
      expect([first?.color, second?.color]).toEqual(['#4472C4', '#ED7D31']);
    }
  });

  it('joins the drawing that a sheet has, and leaves all else as it was', () => {
    const before = unzip(bytes);
    const more = saveWorkbook(addCharts(charted, NAME, [chart('line', 'N1:T9')]), []);
    const after = unzip(more);
    expect(drawingsOf(readWorkbook(more, []), NAME)).toHaveLength(5);
    expect(after['xl/drawings/drawing2.xml']).toBeUndefined();
    const changed = Object.keys(before).filter((part) => textOf(bytes, part) !== textOf(more, part));
    expect(changed.sort()).toEqual([
      '[Content_Types].xml',
      'xl/drawings/_rels/drawing1.xml.rels',
      'xl/drawings/drawing1.xml',
    ]);
  });

  it('follows its cells when rows are put in above them and when the sheet is renamed', () => {
    const known = knownFunctions([]);
    const lower = changeStructure(
      charted,
      { do: 'insert', what: 'rows', sheet: NAME, at: 0, count: 2 },
      known,
    );
    const renamed = changeStructure(lower, { do: 'renameSheet', sheet: NAME, name: 'Tried' }, known);
    const [first] = drawingsOf(renamed, 'Tried');
    expect(first?.anchor).toMatchObject({ from: { row: 2, column: 4 }, to: { row: 20, column: 12 } });
    expect(first?.shows === 'chart' && first.chart.plots[0]?.series[0]?.values.reference).toBe(
      'Tried!$B$4:$B$7',
    );
  });

  it('says which sheet or area is none', () => {
    expect(() => addCharts(plain, 'Elsewhere', [chart('line', 'A1:B2')])).toThrow(/no sheet "Elsewhere"/);
    expect(() => addCharts(plain, NAME, [chart('line', 'here')])).toThrow(/"here", which is no area/);
  });

  it.skipIf(!hasOpenpyxl)('is read by openpyxl as that kind of chart over those cells', () => {
    const program = [
      'import sys, openpyxl',
      'for c in openpyxl.load_workbook(sys.argv[1]).worksheets[0]._charts:',
      '  s = c.series[0]',
      '  x = s.xVal or s.cat',
      '  y = s.yVal or s.val',
      '  t = "".join(r.t for p in c.title.tx.rich.p for r in p.r)',
      '  print(type(c).__name__, getattr(c, "barDir", ""), t, (x.numRef).f, y.numRef.f, [p.v for p in y.numRef.numCache.pt][:1], c.anchor._from.col, c.anchor.to.row, sep="|")',
    ].join('\n');
    const lines = python(program, bytes).split('\n');
    expect(lines.map((line) => line.split('|').slice(0, 2).join(' ').trim())).toEqual([
      'LineChart',
      'ScatterChart',
      'BarChart col',
      'BarChart bar',
    ]);
    expect(lines[0]).toBe(
      `LineChart||Push by draft, a line & more|'${NAME}'!$A$2:$A$5|'${NAME}'!$B$2:$B$5|[33.333333333333336]|4|18`,
    );
  });

  it.skipIf(!hasOffice)(
    'opens in LibreOffice, which keeps kind, titles and values',
    () => {
      const again = recalculatedByOffice(bytes);
      const charts = drawingsOf(again, NAME).flatMap((one) => (one.shows === 'chart' ? [one.chart] : []));
      expect(charts.map(({ plots }) => plots[0]?.kind)).toEqual([...KINDS]);
      for (const one of charts) {
        expect(one.title?.text).toMatch(/^Push by draft/);
        expect(one.along.title?.text).toBe('Draft (deg)');
        expect(one.plots[0]?.series[0]?.values.cached[1]).toBe(20);
      }
    },
    300_000,
  );
});

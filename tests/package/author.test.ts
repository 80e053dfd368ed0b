import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import {
  addSheets,
  newWorkbook,
  readCustomXml,
  withCustomXml,
  withProperties,
  withoutCustomXml,
} from '../../src/package/author';
import type { WorkbookDescription } from '../../src/package/description';
import { readWorkbook, saveWorkbook } from '../../src/package';
import { hasOpenpyxl, PYTHON } from '../support/python';
import { rich, textOf, unzip, zip } from './packages';

const IDS = ['SEAT.FORCE'];
const LINE = { line: 'thin', color: '#BFBFBF' } as const;

const SHEET: WorkbookDescription = {
  properties: { title: 'Seat & spring', subject: 'Push-out insert' },
  font: { name: 'Arial', size: 10 },
  styles: {
    title: { font: { bold: true, size: 16, color: '#1F3864' }, vertical: 'center' },
    input: {
      fill: '#FFF2CC',
      borders: { top: LINE, bottom: LINE },
      numberFormat: '0.0" deg"',
      locked: false,
    },
    caution: { wrap: true, vertical: 'top', font: { italic: true }, borders: { left: LINE } },
  },
  names: { draft: 'Inputs!$B$3' },
  sheets: [
    {
      name: 'Inputs',
      gridlines: false,
      tabColor: '#1F3864',
      columns: { A: 28, 'B:C': 12, H: 0 },
      rows: { 1: 26 },
      merges: ['A1:C1', 'A8:C9'],
      freeze: 'B3',
      protect: true,
      cells: {
        A1: { value: 'Seat', style: 'title' },
        A3: 'Draft',
        B3: { value: 10, style: 'input', note: 'Taper per side.' },
        A4: { value: 'Force', link: 'https://example.org/seat' },
        B4: { formula: 'MOLD.SEAT.FORCE("10 kN",draft,0.15)', value: 31116.8 },
        A5: { value: 'To the lists', link: '#Lists!A1' },
        B5: { formula: 'LET(f,B4,f/2)' },
        A6: true,
        B6: { formula: 'Lists!A1:A2', fills: 'B6:B7', value: 'in' },
        A8: { value: 'Wear eye protection.', style: 'caution' },
      },
      validations: [
        { cells: 'C3:C4', choices: ['in', 'mm'], prompt: { title: 'Units', text: 'Pick one' } },
        { cells: 'C5', choices: 'Lists!$A$1:$A$2' },
        { cells: 'B3', accepts: 'B3>0', refusal: { title: 'Draft', text: 'Above 0 deg.' } },
      ],
      conditions: [
        { cells: 'B3', when: '$B$3<2', style: { fill: '#FFC7CE', font: { color: '#9C0006', bold: true } } },
      ],
      print: {
        paper: 'Letter',
        landscape: true,
        area: 'A1:C9',
        titleRows: '1:2',
        header: { left: 'Seat && spring', right: '&D' },
        footer: { center: '&P / &N' },
        centered: true,
        breaksBefore: [6],
      },
    },
    { name: 'Lists', state: 'hidden', cells: { A1: 'in', A2: 'mm' } },
  ],
};

describe('a workbook made from a description', () => {
  const workbook = newWorkbook(SHEET);
  const [sheet] = workbook.sheets;

  it('reads back as described', () => {
    expect(workbook.names).toEqual([{ name: 'draft', formula: 'Inputs!$B$3', hidden: false }]);
    expect(sheet).toMatchObject({
      name: 'Inputs',
      showsGridlines: false,
      isProtected: true,
      frozen: { rows: 2, columns: 1 },
      tabColor: '#1F3864',
      notes: [{ row: 2, column: 1, text: 'Taper per side.' }],
      hyperlinks: [{ target: 'https://example.org/seat' }, { location: 'Lists!A1' }],
    });
    expect(sheet?.validations.map((one) => one.choices ?? one.formulas)).toEqual([
      ['in', 'mm'],
      ['Lists!$A$1:$A$2'],
      ['B3>0'],
    ]);
    expect(sheet?.conditionalFormats).toMatchObject([
      { formulas: ['$B$3<2'], style: { fill: '#FFC7CE', font: { bold: true, color: '#9C0006' } } },
    ]);
    const formulas = sheet?.cells.flatMap((cell) =>
      cell.formula === undefined ? [] : [[cell.formula, cell.value]],
    );
    expect(formulas).toEqual([
      ['MOLD.SEAT.FORCE("10 kN",draft,0.15)', 31116.8],
      ['LET(f,B4,f/2)', null],
      ['Lists!A1:A2', 'in'],
    ]);
    expect(workbook.sheets[1]?.state).toBe('hidden');
  });

  it('draws the style of a merged area in all of its cells', () => {
    const merged = sheet?.cells
      .filter((cell) => cell.row >= 7)
      .map((cell) => workbook.styles[cell.style]?.borders);
    expect(merged).toEqual(Array.from({ length: 6 }, () => ({ left: LINE })));
  });

  it('is the same file every time and names nobody', () => {
    const file = saveWorkbook(newWorkbook(SHEET), []);
    expect(file).toEqual(saveWorkbook(newWorkbook(SHEET), []));
    const core = textOf(file, 'docProps/core.xml');
    expect(core).toContain(
      '<dc:title xmlns:dc="http://purl.org/dc/elements/1.1/">Seat &amp; spring</dc:title>',
    );
    expect(core).not.toMatch(/creator|lastModifiedBy|created|modified/);
  });

  it('says what it cannot make', () => {
    const withSheet = (more: object) => () => newWorkbook({ sheets: [{ name: 'A', cells: {}, ...more }] });
    expect(withSheet({ cells: { A0: 1 } })).toThrow(/"A0"/);
    expect(withSheet({ cells: { A1: { style: 'none' } } })).toThrow(/style "none"/);
    expect(withSheet({ name: 'a/b' })).toThrow(/cannot be the name/);
    expect(withSheet({ merges: ['x'] })).toThrow(/"x"/);
    expect(withSheet({ merges: ['A1:B2', 'B2:C3'] })).toThrow(/B2:C3 twice/);
    expect(
      withSheet({ validations: [{ cells: 'A1', prompt: { title: 't', text: 'x'.repeat(256) } }] }),
    ).toThrow(/too long/);
    expect(withSheet({ validations: [{ cells: 'A1', choices: ['a,b'] }] })).toThrow(/put them into cells/);
    expect(() => addSheets(workbook, { sheets: [{ name: 'INPUTS', cells: {} }] })).toThrow(
      /already has a sheet/,
    );
  });

  it('has one blank sheet where nothing is described', () => {
    expect(newWorkbook().sheets.map((one) => [one.name, one.cells])).toEqual([['Sheet1', []]]);
  });
});

describe('a workbook that gets more', () => {
  const opened = readWorkbook(zip(rich()), IDS);

  it('keeps its parts, styles and names when sheets are added', () => {
    const grown = addSheets(opened, {
      ...SHEET,
      names: { span: 'Inputs!$B$4' },
      sheets: [{ name: 'Inputs', cells: { A1: { value: 1, style: 'input' } } }],
    });
    expect(grown.sheets.map((one) => one.name)).toEqual(['Seat & spring', 'Lists', 'Inputs']);
    expect(grown.styles.slice(0, opened.styles.length)).toEqual(opened.styles);
    expect(grown.styles[grown.sheets[2]?.cells[0]?.style ?? 0]).toMatchObject({
      fill: '#FFF2CC',
      font: { name: 'Arial', size: 10 },
    });
    expect(grown.names.map((one) => one.name)).toEqual(['draft', 'twice', 'local', 'span']);
    expect(grown.sheets.slice(0, 2)).toEqual(opened.sheets);
    const [before, after] = [unzip(zip(rich())), unzip(saveWorkbook(grown, []))];
    for (const name of [
      'xl/charts/chart1.xml',
      'xl/worksheets/sheet1.xml',
      'xl/calcChain.xml',
      'odd/unknown.bin',
    ]) {
      expect(after[name]).toEqual(before[name]);
    }
  });

  it('carries data of ours, replaces it and lets it go', () => {
    const space = 'urn:example:data';
    const xml = (text: string) => `<d:data xmlns:d="${space}">${text}</d:data>`;
    const one = withCustomXml(
      withCustomXml(opened, 'urn:other', '<o xmlns="urn:other"/>'),
      space,
      xml('é &lt;1'),
    );
    const two = readWorkbook(saveWorkbook(withCustomXml(one, space, xml('second')), []), IDS);
    expect(readCustomXml(one, space)).toContain(xml('é &lt;1'));
    expect(readCustomXml(two, space)).toContain('second');
    expect(readCustomXml(two, 'urn:other')).toContain('<o ');
    const gone = withoutCustomXml(two, space);
    expect(readCustomXml(gone, space)).toBeUndefined();
    expect(readCustomXml(gone, 'urn:other')).toContain('<o ');
    expect([...gone.parts.keys()].filter((name) => name.startsWith('customXml/')).length).toBe(3);
    expect(readCustomXml(opened, space)).toBeUndefined();
  });

  it('takes a title', () => {
    const file = saveWorkbook(withProperties(withProperties(opened, { title: 'One' }), { title: 'Two' }), []);
    expect(textOf(file, 'docProps/core.xml').match(/<dc:title[^>]*>([^<]*)/g)).toEqual([
      '<dc:title xmlns:dc="http://purl.org/dc/elements/1.1/">Two',
    ]);
  });
});

describe.skipIf(!hasOpenpyxl)('openpyxl (skipped where it is not installed)', () => {
  const SCRIPT = `
import json, sys, openpyxl
book = openpyxl.load_workbook(sys.argv[1])
def text(value): return getattr(value, 'text', value)
print(json.dumps({
  'title': book.properties.title,
  'sheets': {sheet.title: {
    'cells': {cell.coordinate: text(cell.value) for row in sheet.iter_rows() for cell in row if cell.value is not None},
    'notes': {cell.coordinate: cell.comment.text for row in sheet.iter_rows() for cell in row if cell.comment},
    'freeze': sheet.freeze_panes, 'merges': sorted(str(one) for one in sheet.merged_cells.ranges),
    'paper': sheet.page_setup.paperSize, 'titles': sheet.print_title_rows, 'state': sheet.sheet_state,
    'validations': [one.formula1 for one in sheet.data_validations.dataValidation],
  } for sheet in book},
}))`;

  function openpyxl(file: Uint8Array): unknown {
    const folder = mkdtempSync(join(tmpdir(), 'workbook-'));
    try {
      const path = join(folder, 'file.xlsx');
      writeFileSync(path, file);
      const run = spawnSync(PYTHON, ['-c', SCRIPT, path], { encoding: 'utf8' });
      if (run.status !== 0) throw new Error(run.stderr);
      return JSON.parse(run.stdout);
    } finally {
      rmSync(folder, { recursive: true });
    }
  }

  it('opens a new workbook and finds what was described', () => {
    const workbook = newWorkbook(SHEET);
    const file = saveWorkbook(workbook, [
      { sheet: 'Inputs', row: 9, column: 0, value: ' typed ', note: 'Later' },
    ]);
    expect(openpyxl(file)).toMatchObject({
      title: 'Seat & spring',
      sheets: {
        Inputs: {
          cells: {
            A1: 'Seat',
            A6: true,
            A10: ' typed ',
            B3: 10,
            B4: '=_xldudf_MOLD_SEAT_FORCE("10 kN",draft,0.15)',
            B5: '=_xlfn.LET(_xlpm.f,B4,_xlpm.f/2)',
          },
          notes: { A10: 'Later', B3: 'Taper per side.' },
          freeze: 'B3',
          merges: ['A1:C1', 'A8:C9'],
          paper: 1,
          titles: '$1:$2',
          validations: ['"in,mm"', 'Lists!$A$1:$A$2', 'B3>0'],
        },
        Lists: { state: 'hidden' },
      },
    });
  });
});

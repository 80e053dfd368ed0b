import { describe, expect, it } from 'vitest';
import { CellError } from '../../src/cells/value';
import type { Workbook } from '../../src/package/model';
import { cellAddress, parseCell } from '../../src/cells/address';
import { cellFinder } from '../../src/package/model';
import type { CellChange } from '../../src/package';
import { readWorkbook, saveWorkbook } from '../../src/package';
import { MAIN, rels, rich, small, textOf, unzip, zip } from './packages';

const IDS = ['SEAT.FORCE', 'TAP.DRILL'];
const open = (files = rich()) => readWorkbook(zip(files), IDS);
const SHEET = 'Seat & spring';
const PART = 'xl/worksheets/sheet1.xml';

function at(workbook: Workbook, address: string, sheet = 0) {
  const place = parseCell(address);
  const found = workbook.sheets[sheet];
  if (place === undefined || found === undefined) throw new Error(address);
  return cellFinder(found)(place.row, place.column);
}

function change(address: string, content: Partial<CellChange>): CellChange {
  const place = parseCell(address);
  if (place === undefined) throw new Error(address);
  return { sheet: SHEET, ...place, value: null, ...content };
}

const saved = (workbook: Workbook, ...changes: CellChange[]) => saveWorkbook(workbook, changes);
const again = (workbook: Workbook, ...changes: CellChange[]) =>
  readWorkbook(saved(workbook, ...changes), IDS);

describe('reading a workbook', () => {
  const workbook = open();
  const [sheet] = workbook.sheets;

  it('gives values of every kind', () => {
    expect(at(workbook, 'A1')?.value).toBe('Seat force');
    expect(at(workbook, 'C1')?.value).toBe('in');
    expect(at(workbook, 'B2')?.value).toBe(45000.5);
    expect(at(workbook, 'C5')?.value).toBe(true);
    expect(at(workbook, 'C7')?.value).toEqual(new CellError('#DIV/0!'));
  });

  it('writes shared formulas out in each cell', () => {
    expect(['B3', 'B4', 'B5'].map((one) => at(workbook, one)?.formula)).toEqual([
      '$B$2+A3*LOG10(10)',
      '$B$2+A4*LOG10(10)',
      '$B$2+A5*LOG10(10)',
    ]);
  });

  it('tells dynamic arrays from array formulas of the old kind', () => {
    expect(at(workbook, 'A6')).toMatchObject({
      formula: 'SEQUENCE(2,2)',
      spill: { top: 5, left: 0, bottom: 6, right: 1 },
    });
    expect(at(workbook, 'A6')?.fixedArray).toBeUndefined();
    expect(at(workbook, 'B8')?.fixedArray).toBe(true);
  });

  it('gives our functions their dots back, whatever their letter case in the file', () => {
    expect(at(workbook, 'A8')?.formula).toBe('MOLD.SEAT.FORCE("10 kN",draft,0.15)');
  });

  it('resolves styles down to colours and format codes', () => {
    const style = workbook.styles[1];
    // Accent 4F81BD darkened by a quarter: spreadsheet programs show 366092, with one step less red by their coarser
    // rounding; white darkened by 15 % is D9D9D9 (both from memory).
    expect(style?.font).toEqual({
      name: 'Arial',
      size: 14,
      bold: true,
      italic: false,
      strike: false,
      underline: 'single',
      color: '#376092',
    });
    expect(style).toMatchObject({
      fill: '#D9D9D9',
      horizontal: 'center',
      wrap: true,
      rotation: -45,
      numberFormat: '0.000" mm"',
    });
    expect(style?.borders).toEqual({ left: { line: 'thin', color: '#FF0000' }, bottom: { line: 'double' } });
    expect(workbook.styles[2]?.numberFormat).toBe('m/d/yyyy');
    expect(workbook.styles[3]).toMatchObject({ numberFormat: '0.00%', locked: false });
  });

  it('gives what the grid shows of a sheet', () => {
    expect(sheet).toMatchObject({
      name: SHEET,
      state: 'visible',
      frozen: { rows: 2, columns: 1 },
      showsGridlines: false,
      zoom: 90,
      tabColor: '#00B050',
      defaultRowHeight: 14.5,
      merges: [{ top: 0, left: 0, bottom: 0, right: 1 }],
      rows: [{ row: 0, height: 30, hidden: false }],
      hyperlinks: [{ target: 'https://example.org/seat' }, { location: 'Lists!A1' }],
      tables: [{ name: 'Stock', columns: ['Size', 'Price'], hasHeader: true, hasTotals: false }],
    });
    expect(sheet?.columns).toEqual([
      { first: 0, last: 0, width: 20.5, hidden: false, style: 0 },
      { first: 1, last: 2, width: 12, hidden: true, style: 3 },
    ]);
    expect(sheet?.validations.map((one) => [one.kind, one.choices, one.formulas[0]])).toEqual([
      ['list', ['in', 'mm'], '"in, mm"'],
      ['list', undefined, 'Lists!$A$1:$A$2'],
      ['list', undefined, 'Lists!$A$2:$A$3'],
    ]);
    expect(sheet?.conditionalFormats).toMatchObject([
      {
        kind: 'cellIs',
        operator: 'lessThan',
        formulas: ['0'],
        style: { fill: '#FFC7CE', font: { color: '#9C0006' } },
      },
    ]);
    expect(workbook.sheets[1]?.state).toBe('hidden');
  });

  it('gives defined names, those of one sheet with their sheet, and leaves print areas to the file', () => {
    expect(workbook.names).toEqual([
      { name: 'draft', formula: "'Seat & spring'!$B$2", hidden: false },
      { name: 'twice', formula: 'LAMBDA(a,a*2)', hidden: false },
      { name: 'local', formula: 'Lists!$A$1', hidden: true, sheet: 'Lists' },
    ]);
  });

  it('tells whether Excel on a Macintosh saved the file', () => {
    const savedBy = (program: string) =>
      open(
        small('', {
          '_rels/.rels': rels(
            ['officeDocument', 'xl/workbook.xml'],
            ['extended-properties', 'docProps/app.xml'],
          ),
          'docProps/app.xml': `<Properties><Application>${program}</Application></Properties>`,
        }),
      ).isFromMacintosh;
    expect(savedBy('Microsoft Macintosh Excel')).toBe(true);
    expect(savedBy('Microsoft Excel')).toBeUndefined();
  });

  it('takes rows and cells without numbers, prefixed elements and encoded characters', () => {
    const files = small('');
    files[PART] =
      `<x:worksheet xmlns:x="${MAIN}"><x:sheetData><x:row><x:c><x:v>1</x:v></x:c><x:c t="str"><x:f>A1&amp;"x"</x:f><x:v>a_x000D_b_x005F_x0041_</x:v></x:c></x:row>` +
      '<x:row r="5"><x:c><x:v>5</x:v></x:c></x:row></x:sheetData></x:worksheet>';
    const workbook = open(files);
    expect(at(workbook, 'A1')?.value).toBe(1);
    expect(at(workbook, 'B1')).toMatchObject({ value: 'a\rb_x0041_', formula: 'A1&"x"' });
    expect(at(workbook, 'A5')?.value).toBe(5);
    const back = readWorkbook(
      saveWorkbook(workbook, [{ ...change('C1', { value: 'new' }), sheet: 'Main' }]),
      IDS,
    );
    expect(at(back, 'C1')?.value).toBe('new');
    expect(at(back, 'A5')?.value).toBe(5);
  });
});

describe('saving a workbook', () => {
  it('keeps every part byte for byte but the sheet that was changed', () => {
    const files = rich();
    const before = unzip(zip(files));
    const after = unzip(saved(open(files), change('B2', { value: 12 })));
    const changed = new Set([PART, 'xl/workbook.xml', '[Content_Types].xml', 'xl/_rels/workbook.xml.rels']);
    for (const [name, bytes] of Object.entries(before)) {
      if (name === 'xl/calcChain.xml') expect(after[name]).toBeUndefined();
      else if (!changed.has(name)) expect([name, after[name]]).toEqual([name, bytes]);
    }
    expect(Object.keys(after).length).toBe(Object.keys(before).length - 1);
    const kept = (files[PART] ?? '').replace('<v>45000.5</v>', '<v>12</v>');
    expect(new TextDecoder().decode(after[PART])).toBe(kept);
  });

  it('takes the order of calculation away with its kind and its relationship', () => {
    const file = saved(open(), change('B2', { value: 12 }));
    expect(textOf(file, '[Content_Types].xml')).not.toContain('calcChain');
    expect(textOf(file, 'xl/_rels/workbook.xml.rels')).not.toContain('calcChain');
  });

  it('does not ask for a full calculation, which would cost a colleague without the add-in the results', () => {
    const text = textOf(saved(open(), change('B2', { value: 12 })), 'xl/workbook.xml');
    expect(text).toContain('<calcPr calcId="191029"/>');
    expect(text).toContain('<extLst><ext uri="{x}"/></extLst>');
  });

  it('keeps all parts where nothing changed', () => {
    expect(unzip(saved(open()))).toEqual(unzip(zip(rich())));
  });

  it('leaves a cell as it stands that is changed to what it is', () => {
    const file = saved(
      open(),
      change('A1', { value: 'Seat force' }),
      change('B4', { value: 2, formula: '$B$2+A4*LOG10(10)' }),
    );
    expect(textOf(file, PART)).toBe(rich()[PART]);
  });

  it('writes numbers, texts, booleans, errors and blanks in full', () => {
    const values = [
      0.1 + 0.2,
      -1e-300,
      ' two  spaces\n<&>"\u0001_x0041_',
      '',
      true,
      false,
      new CellError('#NUM!'),
      null,
    ];
    const back = again(open(), ...values.map((value, row) => change(`D${row + 1}`, { value })));
    values.forEach((value, row) => {
      const cell = at(back, `D${row + 1}`);
      expect(cell?.value ?? null).toEqual(value);
    });
  });

  it('writes an error that files do not know as #VALUE!', () => {
    expect(
      at(again(open(), change('D1', { value: new CellError('#SPILL!'), formula: 'A1' })), 'D1')?.value,
    ).toEqual(new CellError('#VALUE!'));
  });

  it('puts new cells and rows where they belong, and grows the used area', () => {
    const file = saved(
      open(),
      ...['B1', 'D2', 'A3', 'C3', 'A20', 'F10'].map((one, value) => change(one, { value })),
    );
    const xml = textOf(file, PART);
    const addresses = [...xml.matchAll(/<c r="([A-Z]+\d+)"/g)].map((found) => found[1] ?? '');
    const inOrder = [...addresses].sort((a, b) => {
      const [first, second] = [parseCell(a), parseCell(b)];
      return (first?.row ?? 0) - (second?.row ?? 0) || (first?.column ?? 0) - (second?.column ?? 0);
    });
    expect(addresses).toEqual(inOrder);
    expect(xml).toContain('<dimension ref="A1:F20"/>');
    expect(xml).toContain('<row r="10"><c r="F10"><v>5</v></c></row>');
    expect(xml).not.toContain('spans=');
  });

  it('fills a sheet that was empty', () => {
    for (const data of ['<sheetData/>', '<sheetData></sheetData>', '<sheetData><row r="2"/></sheetData>']) {
      const files = small('');
      files[PART] = `<worksheet xmlns="${MAIN}">${data}</worksheet>`;
      const changes = ['C2', 'A1', 'B3'].map((one, value) => ({ ...change(one, { value }), sheet: 'Main' }));
      const back = readWorkbook(saveWorkbook(open(files), changes), IDS);
      expect(back.sheets[0]?.cells.map((cell) => [cellAddress(cell.row, cell.column), cell.value])).toEqual([
        ['A1', 1],
        ['C2', 0],
        ['B3', 2],
      ]);
    }
  });

  it('keeps the style of a cell, and gives a new one the style of its column', () => {
    const back = again(open(), change('A1', { value: 'Other' }), change('B9', { value: 0.5 }));
    expect(at(back, 'A1')?.style).toBe(1);
    expect(at(back, 'B9')?.style).toBe(3);
  });

  it('changes the number format alone', () => {
    const back = again(
      open(),
      change('A1', { value: 2, numberFormat: '0.0" lbf"' }),
      change('B2', { value: 1, numberFormat: '0.00%' }),
    );
    const before = open().styles[1];
    expect(back.styles[at(back, 'A1')?.style ?? 0]).toEqual({ ...before, numberFormat: '0.0" lbf"' });
    expect(back.styles[at(back, 'B2')?.style ?? 0]?.numberFormat).toBe('0.00%');
    expect(back.styles.slice(0, 4)).toEqual(open().styles);
  });

  it('gives a cell another style of the workbook, or a new one', () => {
    const added = { fill: '#FFF2CC', font: { bold: true } };
    const back = again(
      open(),
      change('A2', { value: 'Draft', style: 1 }),
      change('D9', { value: 1, style: added }),
    );
    expect(at(back, 'A2')?.style).toBe(1);
    expect(back.styles[at(back, 'D9')?.style ?? 0]).toMatchObject({
      fill: '#FFF2CC',
      font: { name: 'Arial', size: 10, bold: true },
    });
  });

  it('stores our functions as Excel does, marked as dynamic arrays, with their results', () => {
    const xml = textOf(
      saved(open(), change('D1', { value: 4.04, formula: 'MOLD.TAP.DRILL("10-32")' })),
      PART,
    );
    expect(xml).toContain(
      '<c r="D1" cm="2"><f t="array" ref="D1">_xldudf_MOLD_TAP_DRILL(&quot;10-32&quot;)</f><v>4.04</v></c>',
    );
  });

  it('marks one of our functions that stood there unmarked, and repairs its spelling', () => {
    const formula = 'MOLD.SEAT.FORCE("10 kN",draft,0.15)';
    const xml = textOf(saved(open(), change('A8', { value: 31116.8, formula })), PART);
    expect(xml).toContain(
      '<c r="A8" s="3" cm="2"><f t="array" ref="A8">_xldudf_MOLD_SEAT_FORCE(&quot;10 kN&quot;,draft,0.15)</f>',
    );
  });

  it('adds the mark to a workbook that has none', () => {
    const workbook = open(small('<row r="1"><c r="A1"><v>1</v></c></row>'));
    const file = saveWorkbook(workbook, [
      { ...change('B1', { value: 1, formula: 'SEQUENCE(2)', spill: [[1], [2]] }), sheet: 'Main' },
    ]);
    expect(textOf(file, '[Content_Types].xml')).toContain('PartName="/xl/metadata.xml"');
    expect(textOf(file, 'xl/_rels/workbook.xml.rels')).toContain(
      'relationships/sheetMetadata" Target="/xl/metadata.xml"',
    );
    const back = readWorkbook(file, IDS);
    expect(at(back, 'B1')).toMatchObject({
      formula: 'SEQUENCE(2)',
      spill: { top: 0, left: 1, bottom: 1, right: 1 },
    });
    expect(at(back, 'B1')?.fixedArray).toBeUndefined();
    expect(at(back, 'B2')?.value).toBe(2);
  });

  it('adds the mark to metadata of another kind without disturbing it', () => {
    const files = rich();
    files['xl/metadata.xml'] =
      `<metadata xmlns="${MAIN}"><metadataTypes count="1"><metadataType name="XLRICHVALUE"/></metadataTypes><futureMetadata name="XLRICHVALUE" count="1"><bk/></futureMetadata><valueMetadata count="1"><bk><rc t="1" v="0"/></bk></valueMetadata></metadata>`;
    const file = saved(open(files), change('D1', { value: 1, formula: 'SEQUENCE(1)' }));
    const xml = textOf(file, 'xl/metadata.xml');
    expect(
      [...xml.matchAll(/<(metadataTypes|futureMetadata|cellMetadata|valueMetadata)\b/g)].map(
        (found) => found[1],
      ),
    ).toEqual(['metadataTypes', 'futureMetadata', 'futureMetadata', 'cellMetadata', 'valueMetadata']);
    expect(xml).toContain('<cellMetadata count="1"><bk><rc t="2" v="0"/></bk></cellMetadata>');
    expect(at(readWorkbook(file, IDS), 'D1')?.fixedArray).toBeUndefined();
  });

  it('keeps a formula typed only half as text, since a file with it would not open', () => {
    const back = again(open(), change('D1', { value: new CellError('#NAME?'), formula: 'SUM(A1' }));
    expect(at(back, 'D1')).toMatchObject({ value: '=SUM(A1' });
    expect(at(back, 'D1')?.formula).toBeUndefined();
  });

  it('empties what an array filled before and does not fill any more', () => {
    const back = again(open(), change('A6', { value: 7, formula: 'SEQUENCE(1,3,7)', spill: [[7, 8, 9]] }));
    expect(at(back, 'A6')?.spill).toEqual({ top: 5, left: 0, bottom: 5, right: 2 });
    expect(['B6', 'C6', 'A7', 'B7'].map((one) => at(back, one)?.value ?? null)).toEqual([8, 9, null, null]);
  });

  it('keeps a cell that was typed over the end of an array', () => {
    const back = again(
      open(),
      change('A6', { value: 1, formula: 'SEQUENCE(1)' }),
      change('B7', { value: 4 }),
    );
    expect(['B6', 'A7', 'B7'].map((one) => at(back, one)?.value ?? null)).toEqual([null, null, 4]);
  });

  it('hands a shared formula on when the cell that held its text gets another', () => {
    const back = again(open(), change('B3', { value: 9 }));
    expect(at(back, 'B3')?.formula).toBeUndefined();
    expect(['B4', 'B5'].map((one) => at(back, one)?.formula)).toEqual([
      '$B$2+A4*LOG10(10)',
      '$B$2+A5*LOG10(10)',
    ]);
    expect(at(back, 'B5')?.value).toBe(3);
  });

  it('keeps shared formulas shared where only results change', () => {
    const xml = textOf(
      saved(
        open(),
        change('B3', { value: 8, formula: '$B$2+A3*LOG10(10)' }),
        change('B4', { value: 9, formula: '$B$2+A4*LOG10(10)' }),
      ),
      PART,
    );
    expect(xml).toContain('<f t="shared" ref="B3:B5" si="0">$B$2+A3*LOG10(10)</f><v>8</v>');
    expect(xml).toContain('<f t="shared" si="0"/><v>9</v>');
  });

  it('keeps an array formula of the old kind as it is', () => {
    const xml = textOf(saved(open(), change('B8', { value: 8, formula: 'SUM(A1:A3*2)' })), PART);
    expect(xml).toContain('<c r="B8"><f t="array" ref="B8">SUM(A1:A3*2)</f><v>8</v></c>');
  });

  it('adds, changes and takes away notes', () => {
    const one = again(
      open(),
      change('A1', { value: 'Seat force', note: 'First\n<note>' }),
      change('B2', { value: 45000.5, note: 'Second' }),
    );
    expect(one.sheets[0]?.notes.map((note) => note.text)).toEqual(['First\n<note>', 'Second']);
    expect(at(one, 'A1')?.value).toBe('Seat force');
    const file = saved(
      one,
      change('A1', { value: 'Seat force', note: null }),
      change('B2', { value: 45000.5, note: 'Third' }),
      change('C9', { value: 1, note: 'Fourth' }),
    );
    expect(readWorkbook(file, IDS).sheets[0]?.notes).toEqual([
      { row: 1, column: 1, text: 'Third' },
      { row: 8, column: 2, text: 'Fourth' },
    ]);
    expect(textOf(file, 'xl/drawings/vmlDrawing1.vml').match(/<v:shape /g)).toHaveLength(2);
    expect(textOf(file, 'xl/comments1.xml')).toContain('<author/>');
    expect(textOf(file, PART)).toMatch(/<drawing r:id="rId1"\/><legacyDrawing [^>]*\/><tableParts/);
  });

  it("writes a note under nobody's name, also beside the notes of somebody", () => {
    const named = unzip(saved(open(), change('B2', { value: 45000.5, note: 'Theirs' })));
    const files = Object.fromEntries(
      Object.entries(named).map(([name, bytes]) => [name, new TextDecoder().decode(bytes)]),
    );
    files['xl/comments1.xml'] =
      files['xl/comments1.xml']?.replace('<author/>', '<author>A. Person</author>') ?? '';
    const xml = textOf(saved(open(files), change('C9', { value: 1, note: 'Ours' })), 'xl/comments1.xml');
    expect(xml).toContain('<authors><author>A. Person</author><author/></authors>');
    expect(xml).toContain('<comment ref="C9" authorId="1">');
    expect(xml).toContain('<comment ref="B2" authorId="0">');
  });

  it('gives the same bytes for the same changes', () => {
    const make = () => saved(open(), change('D1', { value: 1, formula: 'MOLD.TAP.DRILL("M6")', note: 'x' }));
    expect(make()).toEqual(make());
  });
});

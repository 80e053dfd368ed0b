import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { cellAddress, areaAddress } from '../../../src/cells/address';
import { newWorkbook } from '../../../src/package/author';
import type { Workbook } from '../../../src/package/model';
import { readWorkbook, saveWorkbook } from '../../../src/package';
import { knownFunctions } from '../../../src/package/spelling';
import { hasOpenpyxl, PYTHON } from '../../support/python';
import { CannotChange, changeStructure, type StructureAct } from '../../../src/package/structure';

const RED = { fill: '#FFC7CE' };

const design = (): Workbook =>
  newWorkbook({
    names: { draft: 'Insert!$B$3', pushes: 'Insert!$A$6:$A$9' },
    sheets: [
      {
        name: 'Insert',
        freeze: 'B2',
        columns: { A: 20, B: 12 },
        rows: { 3: 30 },
        merges: ['A1:C1'],
        cells: {
          A1: 'Push-out insert',
          A3: { value: 'Draft', note: 'per side' },
          B3: 5,
          B4: { formula: 'TAN(draft*PI()/180)', value: 0.0875 },
          A6: 10,
          A7: 20,
          A8: 30,
          A9: 40,
          B6: { formula: 'A6*$B$3', value: 50 },
          B7: { formula: 'A7*$B$3', value: 100 },
          B8: { formula: 'A8*$B$3', value: 150 },
          B9: { formula: 'A9*$B$3', value: 200 },
          B10: { formula: 'SUM(B6:B9)', value: 500 },
          D6: { formula: 'A6:A9*2', fills: 'D6:D9', value: 20 },
          A12: { value: 'To the list', link: '#Lists!A2' },
        },
        validations: [{ cells: 'B3', accepts: 'B3>0', refusal: { title: 'Draft', text: 'Above 0.' } }],
        conditions: [{ cells: 'B6:B9', when: 'B6>$B$3*20', style: RED }],
        print: { paper: 'A4', area: 'A1:D12', titleRows: '1:1' },
      },
      {
        name: 'Lists',
        cells: {
          A1: 'Pushes',
          A2: { formula: 'Insert!B10', value: 500 },
          A3: { formula: 'SUM(Insert!A6:A9)', value: 100 },
        },
      },
    ],
  });

const change = (workbook: Workbook, act: StructureAct): Workbook =>
  changeStructure(workbook, act, knownFunctions([]));

function formulas(workbook: Workbook, name = 'Insert'): Record<string, string> {
  const sheet = workbook.sheets.find((one) => one.name === name);
  return Object.fromEntries(
    (sheet?.cells ?? []).flatMap(({ row, column, formula }) =>
      formula === undefined ? [] : [[cellAddress(row, column), formula]],
    ),
  );
}

const sheetNamed = (workbook: Workbook, name: string) => {
  const sheet = workbook.sheets.find((one) => one.name === name);
  if (!sheet) throw new Error(`no sheet ${name}`);
  return sheet;
};

describe('a row inserted', () => {
  const after = change(design(), { do: 'insert', what: 'rows', sheet: 'Insert', at: 6, count: 2 });

  it('moves the formulas that point across it, on every sheet', () => {
    expect(formulas(after)).toMatchObject({
      B6: 'A6*$B$3',
      B9: 'A9*$B$3',
      B12: 'SUM(B6:B11)',
      B4: 'TAN(draft*PI()/180)',
    });
    expect(formulas(after, 'Lists')).toEqual({ A2: 'Insert!B12', A3: 'SUM(Insert!A6:A11)' });
  });

  it('moves names, rules, links, notes and what is printed', () => {
    expect(after.names.find(({ name }) => name === 'pushes')?.formula).toBe('Insert!$A$6:$A$11');
    const sheet = sheetNamed(after, 'Insert');
    expect(
      sheet.conditionalFormats.map(({ areas, formulas: texts }) => [areas.map(areaAddress), texts]),
    ).toEqual([[['B6:B11'], ['B6>$B$3*20']]]);
    expect(sheet.hyperlinks.map(({ area, location }) => [areaAddress(area), location])).toEqual([
      ['A14', 'Lists!A2'],
    ]);
    expect(sheet.notes).toMatchObject([{ row: 2, column: 0 }]);
    const book = new TextDecoder().decode(after.parts.get('xl/workbook.xml'));
    expect(book).toContain("'Insert'!$A$1:$D$14");
  });

  it('gives the new rows the look of the row before them', () => {
    const taller = change(design(), { do: 'insert', what: 'rows', sheet: 'Insert', at: 3, count: 1 });
    expect(
      sheetNamed(taller, 'Insert')
        .rows.filter(({ height }) => height === 30)
        .map(({ row }) => row),
    ).toEqual([2, 3]);
  });

  it('above the freeze stays in view with the rows there', () => {
    const frozen = change(design(), { do: 'insert', what: 'rows', sheet: 'Insert', at: 0, count: 1 });
    expect(sheetNamed(frozen, 'Insert').frozen).toEqual({ rows: 2, columns: 1 });
    expect(sheetNamed(frozen, 'Insert').merges.map(areaAddress)).toEqual(['A2:C2']);
  });
});

describe('rows deleted', () => {
  it('take their cells along and leave #REF! where nothing is left to speak of', () => {
    const after = change(design(), { do: 'delete', what: 'rows', sheet: 'Insert', at: 2, count: 1 });
    expect(formulas(after)).toMatchObject({ B5: 'A5*#REF!', B9: 'SUM(B5:B8)' });
    expect(after.names.find(({ name }) => name === 'draft')?.formula).toBe('#REF!');
    expect(sheetNamed(after, 'Insert').validations).toEqual([]);
    expect(sheetNamed(after, 'Insert').notes).toEqual([]);
  });

  it('keep a rule that loses its first cells, read from the next', () => {
    const after = change(design(), { do: 'delete', what: 'rows', sheet: 'Insert', at: 5, count: 2 });
    expect(
      sheetNamed(after, 'Insert').conditionalFormats.map(({ areas, formulas: texts }) => [
        areas.map(areaAddress),
        texts,
      ]),
    ).toEqual([[['B6:B7'], ['B6>$B$3*20']]]);
  });
});

describe('a column inserted', () => {
  it('takes the width of the one before and widens what spans it', () => {
    const after = change(design(), { do: 'insert', what: 'columns', sheet: 'Insert', at: 1, count: 1 });
    expect(formulas(after)).toMatchObject({ C6: 'A6*$C$3', C10: 'SUM(C6:C9)' });
    expect(sheetNamed(after, 'Insert').merges.map(areaAddress)).toEqual(['A1:D1']);
    expect(
      sheetNamed(after, 'Insert').columns.map(({ first, last, width }) => [
        first,
        last,
        Math.round(width ?? 0),
      ]),
    ).toEqual(
      [
        [0, 1, 20],
        [2, 2, 12],
      ].map(([a, b, w]) => [a, b, expect.closeTo(w ?? 0, 0) as number]),
    );
  });
});

describe('cells cut and pasted', () => {
  it('take their rules along and are followed', () => {
    const area = { top: 5, bottom: 6, left: 1, right: 1 };
    const after = change(design(), {
      do: 'moveCells',
      sheet: 'Insert',
      area,
      to: { sheet: 'Insert', row: 5, column: 6 },
    });
    expect(formulas(after)).toMatchObject({ G6: 'A6*$B$3', B10: 'SUM(B6:B9)' });
    const rules = sheetNamed(after, 'Insert').conditionalFormats;
    expect(rules.flatMap(({ areas }) => areas.map(areaAddress)).sort()).toEqual(['B8:B9', 'G6:G7']);
  });

  it('are refused by name where merged cells would be parted', () => {
    const area = { top: 0, bottom: 0, left: 0, right: 0 };
    expect(() =>
      change(design(), {
        do: 'moveCells',
        sheet: 'Insert',
        area,
        to: { sheet: 'Insert', row: 20, column: 0 },
      }),
    ).toThrow(
      new CannotChange('The merged cells A1:C1 on "Insert" would be parted; take the merge off first.'),
    );
  });

  it('cannot be pushed off the sheet', () => {
    expect(() =>
      change(design(), { do: 'insert', what: 'columns', sheet: 'Insert', at: 0, count: 16_383 }),
    ).toThrow(/pushed off the sheet/);
  });
});

describe('a sheet', () => {
  it('renamed is renamed wherever it is named', () => {
    const after = change(design(), { do: 'renameSheet', sheet: 'Insert', name: "Part B's" });
    expect(formulas(after, 'Lists')).toEqual({ A2: "'Part B''s'!B10", A3: "SUM('Part B''s'!A6:A9)" });
    expect(after.names.find(({ name }) => name === 'draft')?.formula).toBe("'Part B''s'!$B$3");
  });

  it.each([
    ['', 'needs a name'],
    ['a/b', 'cannot hold'],
    ['lists', 'already'],
    ['x'.repeat(32), 'at most 31'],
  ])('is not renamed %j', (name, why) => {
    expect(() => change(design(), { do: 'renameSheet', sheet: 'Insert', name })).toThrow(why);
  });

  it('copied has its rules, names, notes and print set-up, and speaks of itself', () => {
    const after = change(design(), { do: 'copySheet', sheet: 'Insert', name: 'Insert 2' });
    expect(after.sheets.map(({ name }) => name)).toEqual(['Insert', 'Insert 2', 'Lists']);
    const [one, two] = [sheetNamed(after, 'Insert'), sheetNamed(after, 'Insert 2')];
    expect({ ...two, name: '' }).toEqual({ ...one, name: '' });
    expect(
      after.names.filter(({ sheet }) => sheet === 'Insert 2').map(({ name, formula }) => [name, formula]),
    ).toEqual(expect.arrayContaining([['draft', "'Insert 2'!$B$3"]]));
  });

  it('deleted leaves words where it was named, and the last one stays', () => {
    const after = change(design(), { do: 'deleteSheet', sheet: 'Insert' });
    expect(formulas(after, 'Lists')).toEqual({ A2: '#REF!', A3: 'SUM(#REF!)' });
    expect([...after.parts.keys()].filter((part) => /comments|vmlDrawing/.test(part))).toEqual([]);
    expect(() => change(after, { do: 'deleteSheet', sheet: 'Lists' })).toThrow('keeps at least one');
  });

  it('moved keeps the names that belong to sheets', () => {
    const copied = change(design(), { do: 'copySheet', sheet: 'Insert', name: 'Insert 2' });
    const after = change(copied, { do: 'moveSheet', sheet: 'Insert 2', to: 2 });
    expect(after.sheets.map(({ name }) => name)).toEqual(['Insert', 'Lists', 'Insert 2']);
    expect(after.names.filter(({ sheet }) => sheet === 'Insert 2').map(({ name }) => name)).toContain(
      'draft',
    );
  });
});

describe('a file of a changed structure', () => {
  it.runIf(hasOpenpyxl)('opens in another program with its formulas in place', () => {
    let workbook = design();
    for (const act of [
      { do: 'insert', what: 'rows', sheet: 'Insert', at: 6, count: 2 },
      { do: 'copySheet', sheet: 'Insert', name: 'Insert 2' },
      { do: 'delete', what: 'columns', sheet: 'Insert 2', at: 3, count: 1 },
      { do: 'renameSheet', sheet: 'Lists', name: 'Sums' },
    ] satisfies StructureAct[])
      workbook = change(workbook, act);
    const folder = mkdtempSync(join(tmpdir(), 'moldsheet-'));
    const file = join(folder, 'a.xlsx');
    writeFileSync(file, saveWorkbook(workbook, []));
    const script = `import openpyxl,sys\nb=openpyxl.load_workbook(sys.argv[1])\nprint(b.sheetnames, b['Insert']['B12'].value, b['Insert 2']['B12'].value, b['Sums']['A2'].value)`;
    const { stdout, stderr } = spawnSync(PYTHON, ['-c', script, file], { encoding: 'utf8' });
    rmSync(folder, { recursive: true });
    expect(stderr).toBe('');
    expect(stdout.trim()).toBe("['Insert', 'Insert 2', 'Sums'] =SUM(B6:B11) =SUM(B6:B11) =Insert!B12");
  });

  it('reads the same again', () => {
    const after = change(design(), { do: 'insert', what: 'rows', sheet: 'Insert', at: 6, count: 2 });
    expect(readWorkbook(saveWorkbook(after, []), []).sheets).toEqual(after.sheets);
  });
});

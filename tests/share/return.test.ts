import { describe, expect, it } from 'vitest';
import { worksheetFunctions } from '../../src/call/functions';
import { cellAddress, parseCell } from '../../src/cells/address';
import type { WorkbookDescription } from '../../src/package/description';
import { newWorkbook, readWorkbook, saveWorkbook } from '../../src/package';
import { removeSheets, withCustomXml } from '../../src/package/author';
import type { CellChange } from '../../src/package/changes';
import type { Workbook } from '../../src/package/model';
import { knownFunctions } from '../../src/package/spelling';
import { changeStructure, type StructureAct } from '../../src/package/structure';
import { restoreWorkbook, shareWorkbook, type ShareOptions } from '../../src/share';
import { recalculate } from '../../src/workbook/recalculate';

const ids = worksheetFunctions.map(({ id }) => id);

const design: WorkbookDescription = {
  sheets: [
    {
      name: 'Press',
      cells: {
        A1: 'push',
        B1: 100,
        B2: 10,
        B3: 15,
        B4: 20,
        B6: { formula: 'MOLD.SEAT.FORCE(B1,$B$2,friction)' },
        B7: { formula: 'SUM(B6:D6)+Limits!A1' },
        D1: { formula: 'MOLD.SEAT.FORCE(B1,B2:B4,friction)', fills: 'D1:D3' },
        D5: { formula: 'MOLD.STACK.TRIALS(B2:B4)', fills: 'D5:H5' },
        D6: { formula: 'MAX(Limits!$A$1:$A$3)' },
      },
    },
    { name: 'Limits', cells: { A1: 500, A3: 700, B1: { formula: 'IF(Press!B6>A1,"too much","fine")' } } },
  ],
  names: { friction: '0.15' },
};

async function calculated(description: WorkbookDescription): Promise<Workbook> {
  const workbook = newWorkbook(description);
  return readWorkbook(saveWorkbook(workbook, await recalculate(workbook, worksheetFunctions)), ids);
}

const copyOf = async (workbook: Workbook, options: Partial<ShareOptions> = {}): Promise<Workbook> =>
  readWorkbook((await shareWorkbook(workbook, worksheetFunctions, { as: 'native', ...options })).bytes, ids);

const after = (workbook: Workbook, ...acts: StructureAct[]): Workbook =>
  acts.reduce((book, act) => changeStructure(book, act, knownFunctions(ids)), workbook);

/** Every formula and every color of a workbook by its place; what hangs on nothing else is left out. */
const told = (workbook: Workbook): string[] =>
  workbook.sheets.flatMap(({ name, cells, notes }) => [
    ...cells.map(
      ({ row, column, formula, value, style }) =>
        `${name}!${cellAddress(row, column)} ${formula ?? String(value)} ${workbook.styles[style]?.fill ?? ''}`,
    ),
    ...notes.map(({ row, column, text }) => `${name}!${cellAddress(row, column)} ${text}`),
  ]);

async function back(copy: Workbook) {
  const report = await restoreWorkbook(copy, worksheetFunctions);
  if (!report) throw new Error('nothing came back');
  return { ...report, workbook: readWorkbook(report.bytes, ids) };
}

const edited = (workbook: Workbook, ...changes: [string, string, CellChange['value']][]): Workbook =>
  readWorkbook(
    saveWorkbook(
      workbook,
      changes.map(([sheet, cell, value]) => ({
        sheet,
        value,
        ...(parseCell(cell) ?? { row: 0, column: 0 }),
      })),
    ),
    ids,
  );

const acts: [string, StructureAct[]][] = [
  ['nothing', []],
  ['rows above', [{ do: 'insert', what: 'rows', sheet: 'Press', at: 0, count: 2 }]],
  ['a row amid what a formula reads', [{ do: 'insert', what: 'rows', sheet: 'Press', at: 2, count: 1 }]],
  ['a column', [{ do: 'insert', what: 'columns', sheet: 'Press', at: 1, count: 1 }]],
  ['a sheet with another name', [{ do: 'renameSheet', sheet: 'Press', name: "The maker's press" }]],
  [
    'the sheet of the originals with another name',
    [{ do: 'renameSheet', sheet: 'MoldOriginals', name: 'x' }],
  ],
  ['the sheet of the originals shown', [{ do: 'hideSheet', sheet: 'MoldOriginals', hidden: false }]],
  [
    'all of these',
    [
      { do: 'insert', what: 'rows', sheet: 'Press', at: 1, count: 3 },
      { do: 'insert', what: 'columns', sheet: 'Limits', at: 0, count: 1 },
      { do: 'renameSheet', sheet: 'Limits', name: 'Press limits' },
      { do: 'moveSheet', sheet: 'Press limits', to: 0 },
    ],
  ],
];

describe.each(['native', 'both', 'values'] as const)('a copy of kind %s comes back', (as) => {
  it.each(acts)(
    'after %s, with formulas, colors and notes as if the original had gone the same way',
    async (_, done) => {
      const workbook = await calculated(design);
      const copy = after(await copyOf(workbook, { as, basis: true }), ...done);
      const { changed, problems, workbook: again } = await back(copy);
      const own = done.filter((act) => act.sheet !== 'MoldOriginals');
      // A spill that was torn apart in the copy is whole again.
      const wanted = after(workbook, ...own);
      expect({ changed, problems }).toEqual({ changed: [], problems: [] });
      const formulas = (book: Workbook) =>
        told(book)
          .filter((one) => /[A-Z]\(/.test(one))
          .sort();
      expect(formulas(again)).toEqual(formulas(wanted));
      expect(again.sheets.map(({ name }) => name)).toEqual(wanted.sheets.map(({ name }) => name));
      if (done.length === 0) expect(told(again)).toEqual(told(workbook));
    },
  );
});

describe('a copy that comes back', () => {
  it('takes changed inputs along from where they are now, and says so', async () => {
    const copy = after(
      await copyOf(await calculated(design)),
      { do: 'insert', what: 'rows', sheet: 'Press', at: 0, count: 1 },
      { do: 'renameSheet', sheet: 'Press', name: 'Clamp' },
    );
    const { changed, workbook } = await back(
      edited(copy, ['Clamp', 'B2', 200], ['Clamp', 'A9', 'why so much?']),
    );
    expect(changed).toEqual([
      { sheet: 'Clamp', cell: 'B2', before: '100', now: '200' },
      { sheet: 'Clamp', cell: 'A9', before: '', now: 'why so much?' },
    ]);
    const cell = workbook.sheets[0]?.cells.find(({ row, column }) => row === 6 && column === 1);
    expect(cell?.formula).toBe('MOLD.SEAT.FORCE(B2,$B$3,friction)');
    // By hand: 200/(sin 10° + 0.15 cos 10°).
    expect(cell?.value).toBeCloseTo(200 / (Math.sin(Math.PI / 18) + 0.15 * Math.cos(Math.PI / 18)), 9);
  });

  it('says what was deleted in it: a row, what a formula reads, a sheet', async () => {
    const copy = await copyOf(await calculated(design));
    const row: StructureAct = { do: 'delete', what: 'rows', sheet: 'Press', at: 1, count: 1 };
    const without = await back(after(copy, row));
    expect(without.changed).toContainEqual({ sheet: 'Press', cell: 'B2', before: '10', now: 'deleted' });
    expect(without.problems).toEqual([
      'Press!B5 reads cells that were deleted in the copy: =MOLD.SEAT.FORCE(B1,#REF!,friction).',
    ]);
    const { changed } = await back(after(copy, { do: 'deleteSheet', sheet: 'Limits' }));
    expect(changed[0]).toEqual({ sheet: 'Limits', cell: '', before: 'the sheet', now: 'is gone' });
  });

  it.each([
    [
      'an original that was edited',
      ['E5', 'MOLD.SEAT.FORCE(1,2,3)'],
      /line 5 of the sheet MoldOriginals, for Press!/,
    ],
    ['a place that was written over', ['B5', 7], /line 5 of the sheet MoldOriginals/],
    ['a checksum that was edited', ['I6', 'abc'], /line 6 of the sheet/],
    ['a first line that was edited', ['B3', 'basis 9'], /its first line/],
  ] as const)('tells of %s, guesses nothing and brings the rest', async (_, [cell, value], says) => {
    const copy = await copyOf(await calculated(design));
    const { problems, restored } = await back(edited(copy, ['MoldOriginals', cell, value]));
    expect(problems[0]).toMatch(says);
    expect(restored).toBeGreaterThan(0);
  });

  it('tells of lines that are gone', async () => {
    const copy = await copyOf(await calculated(design));
    const cut = after(copy, { do: 'delete', what: 'rows', sheet: 'MoldOriginals', at: 5, count: 2 });
    expect((await back(cut)).problems[0]).toMatch(/: 2 of its \d+ lines, which are gone\./);
  });

  it('leaves the sheets of the working where a formula still needs them', async () => {
    const workbook = await calculated({
      sheets: [
        { name: 'Cool', cells: { A1: 0.1, B1: { formula: 'MOLD.COOL.TIME(A1,0.0001,430,100,180)' } } },
      ],
    });
    const copy = await copyOf(workbook);
    const line = copy.sheets
      .find(({ name }) => name === 'MoldOriginals')
      ?.cells.find(({ value }) => value === 'Cool!B1');
    const { problems, workbook: again } = await back(
      edited(copy, ['MoldOriginals', `E${(line?.row ?? 0) + 1}`, 'MOLD.SEAT.FREEDRAFT(1)']),
    );
    expect(problems.join('\n')).toMatch(/for Cool!B1[\s\S]*sheets of the working stay/);
    expect(again.sheets.map(({ name }) => name)).not.toEqual(['Cool']);
    expect(again.sheets[0]?.cells.find(({ formula }) => formula !== undefined)?.value).toBe(
      workbook.sheets[0]?.cells.find(({ formula }) => formula !== undefined)?.value,
    );
  });

  it('is none where its record was taken away', async () => {
    const copy = await copyOf(await calculated(design));
    expect(await restoreWorkbook(removeSheets(copy, ['MoldOriginals']), worksheetFunctions)).toBeUndefined();
  });

  it('may be of an earlier version, which kept the originals in a part of their own', async () => {
    const workbook = newWorkbook({
      sheets: [{ name: 'Old', cells: { A1: 5, B1: { formula: 'A1*2', value: 10 } } }],
    });
    const namespace = 'urn:moldsheet:original:1';
    const xml =
      `<original xmlns="${namespace}" basis="basis 1"><sheet name="Old"><v r="A1" is="4"/>` +
      '<f r="B1" is="=A1*2" was="MOLD.SEAT.FREEDRAFT(A1)"/></sheet></original>';
    const { changed, restored, basis, workbook: again } = await back(withCustomXml(workbook, namespace, xml));
    expect({ changed, restored, basis }).toEqual({
      changed: [{ sheet: 'Old', cell: 'A1', before: '4', now: '5' }],
      restored: 1,
      basis: 'basis 1',
    });
    expect(again.sheets[0]?.cells[1]?.formula).toBe('MOLD.SEAT.FREEDRAFT(A1)');
  });
});

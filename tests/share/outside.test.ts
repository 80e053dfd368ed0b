import { describe, expect, it } from 'vitest';
import { worksheetFunctions } from '../../src/call/functions';
import type { WorksheetFunction } from '../../src/call/worksheetFunction';
import { cellAddress, parseCell } from '../../src/cells/address';
import { newWorkbook, readWorkbook, saveWorkbook } from '../../src/package';
import type { WorkbookDescription } from '../../src/package/description';
import type { CellChange } from '../../src/package/changes';
import type { Workbook } from '../../src/package/model';
import { callsOurs, knownFunctions } from '../../src/package/spelling';
import { changeStructure } from '../../src/package/structure';
import { restoreWorkbook, shareWorkbook, type ShareOptions } from '../../src/share';
import { recalculate } from '../../src/workbook/recalculate';

const ids = worksheetFunctions.map(({ id }) => id);

const design: WorkbookDescription = {
  sheets: [
    {
      name: 'Seat',
      cells: {
        A1: 100,
        A2: 5,
        A3: 10,
        A4: 15,
        B1: { formula: 'force*2' },
        C1: { formula: 'MOLD.UNIT.CONVERT(force,"lbf","N")' },
        D1: 127,
      },
      validations: [
        { cells: 'A2:A4', accepts: 'MOLD.SEAT.FORCE($A$1,A2,0.15)<1000' },
        { cells: 'D1', choices: 'MOLD.UNIT.CONVERT($A$2:$A$4,"in","mm")' },
      ],
      conditions: [
        { cells: 'A2:A4', when: 'MOLD.SEAT.FORCE($A$1,A2,0.15)>300', style: { fill: '#FF0000' } },
        { cells: 'A1', when: 'MOLD.STACK.TRIALS($A$2:$A$4)>1', style: { fill: '#00FF00' } },
      ],
    },
  ],
  names: { force: 'MOLD.SEAT.FORCE(Seat!$A$1,Seat!$A$3,0.15)', near: 'MOLD.SEAT.FREEDRAFT(Seat!A2/100)' },
};

async function calculated(description: WorkbookDescription): Promise<Workbook> {
  const workbook = newWorkbook(description);
  return readWorkbook(saveWorkbook(workbook, await recalculate(workbook, worksheetFunctions)), ids);
}

const shared = async (as: ShareOptions['as']) => {
  const workbook = await calculated(design);
  const { bytes, left, cells } = await shareWorkbook(workbook, worksheetFunctions, { as });
  return { workbook, left, cells, copy: readWorkbook(bytes, ids) };
};

const outside = ({ sheets, names }: Workbook): string[] => [
  ...sheets.flatMap(({ validations, conditionalFormats }) =>
    [...validations, ...conditionalFormats].flatMap(({ formulas }) => formulas),
  ),
  ...names.map(({ name, formula }) => `${name} = ${formula}`),
];

/** Values of the copy without our functions, once cells hold something else. */
async function after(copy: Workbook, edits: Record<string, number>) {
  const changes = Object.entries(edits).map(([cell, value]): CellChange => ({
    sheet: 'Seat',
    value,
    ...(parseCell(cell) ?? { row: 0, column: 0 }),
  }));
  const found = await recalculate(readWorkbook(saveWorkbook(copy, changes), ids), [], { anew: true });
  return (reference: string) => {
    const [sheet, cell = ''] = reference.replaceAll("'", '').split('!');
    const place = parseCell(cell);
    return found.find((one) => one.sheet === sheet && one.row === place?.row && one.column === place.column)
      ?.value;
  };
}

/** What the formulas of the first sheet give after entries were changed, by cell. */
async function valuesOf(
  workbook: Workbook,
  functions: readonly WorksheetFunction[] = [],
  entries: Readonly<Record<string, string | number>> = {},
): Promise<Map<string, unknown>> {
  const changes = Object.entries(entries).map(([cell, value]): CellChange => {
    const { row = 0, column = 0 } = parseCell(cell) ?? {};
    return { sheet: 'Seat', row, column, value };
  });
  const changed = readWorkbook(saveWorkbook(workbook, changes), ids);
  const results = await recalculate(changed, functions, { anew: true });
  return new Map(
    results.flatMap(({ sheet, row, column, value }) =>
      sheet === 'Seat' ? [[cellAddress(row, column), value]] : [],
    ),
  );
}

describe('our functions outside cells', () => {
  it('are the worksheet’s own in a copy, live, and told by name where they cannot be', async () => {
    const { copy, left, cells } = await shared('native');
    expect(cells.map(({ how }) => how)).not.toContain('frozen');
    expect(outside(copy).filter(callsOurs)).toHaveLength(2);
    expect(left).toEqual([
      expect.stringMatching(/^the name near: =MOLD.SEAT.FREEDRAFT.*goes along with the cell that asks/),
      expect.stringMatching(/^a conditional format on Seat!A1: =MOLD.STACK.TRIALS/),
    ]);
    const own = copy.sheets[0];
    const value = await after(copy, { A1: 300, A4: 20 });
    // By hand: 300/(sin a + 0.15 cos a).
    const force = (degrees: number) =>
      300 / (Math.sin((degrees * Math.PI) / 180) + 0.15 * Math.cos((degrees * Math.PI) / 180));
    expect(value('Seat!B1')).toBeCloseTo(2 * force(10), 8);
    expect(value('Seat!C1')).toBeCloseTo(4.4482216152605 * force(10), 7);
    const rule = own?.validations.find(({ kind }) => kind === 'custom')?.formulas[0] ?? '';
    const format = own?.conditionalFormats.find(({ areas }) => areas[0]?.top === 1)?.formulas[0] ?? '';
    const below = (reference: string, rows: number) =>
      reference.replace(/\d+$/, (row) => String(Number(row) + rows));
    for (const [rows, degrees] of [5, 10, 20].entries()) {
      expect(value(below(rule, rows)), `${degrees}°`).toBe(force(degrees) < 1000);
      expect(value(below(format, rows)), `${degrees}°`).toBe(force(degrees) > 300);
    }
  });

  it('say that they cannot tell, where a formula passes over what only the copy refuses of a name', async () => {
    const seat = 'MOLD.SEAT.FORCE(Seat!$A$1,Seat!$A$2,0.15)';
    const workbook = await calculated({
      sheets: [
        {
          name: 'Seat',
          cells: {
            A1: '100 lbf',
            A2: 5,
            A3: 2,
            B1: { formula: 'IFERROR(force,0)' },
            B2: { formula: 'IF(ISNUMBER(twice),twice,-1)' },
            B3: { formula: 'COUNT(force)' },
            B4: { formula: 'safe' },
            B5: { formula: 'force' },
            B6: { formula: 'IFERROR(B5,0)' },
            B7: { formula: 'IFERROR(tried,0)' },
            B8: { formula: 'MOLD.STACK.WORST(some)' },
          },
        },
      ],
      names: {
        force: seat,
        twice: 'force*2',
        safe: `IFERROR(${seat},0)`,
        tried: 'MOLD.STACK.TRIALS(Seat!$A$2:$A$3)',
        some: 'OFFSET(Seat!$A$2,0,0,Seat!$A$3,1)',
      },
    });
    const { bytes, cells } = await shareWorkbook(workbook, worksheetFunctions, { as: 'native' });
    const copy = readWorkbook(bytes, ids);
    const frozen = cells.filter(({ how }) => how === 'frozen').map(({ cell }) => cell);
    expect(frozen).toEqual(['B8', 'B7']);
    const asIs = await valuesOf(copy);
    for (const [cell, value] of await valuesOf(workbook, worksheetFunctions))
      expect(asIs.get(cell), cell).toEqual(value);
    const says = 'made for other inputs: ask for a new copy';
    // The function reads the exponent; the copy does not.
    const force = await valuesOf(copy, [], { A1: '1e2 lbf' });
    expect(['B1', 'B2', 'B3', 'B4', 'B6'].map((cell) => force.get(cell))).toEqual(Array(5).fill(says));
    const other = await valuesOf(copy, [], { A2: 7 });
    expect(['B7', 'B8'].map((cell) => other.get(cell))).toEqual([says, says]);
    const wanted = await valuesOf(workbook, worksheetFunctions, { A2: 7 });
    for (const cell of ['B1', 'B2', 'B3', 'B4', 'B6'])
      expect(other.get(cell), cell).toBeCloseTo(Number(wanted.get(cell)), 9);
  });

  it('give the choices of a list as they were', async () => {
    const { workbook, copy } = await shared('native');
    expect(copy.sheets[0]?.validations.find(({ kind }) => kind === 'list')?.choices).toEqual([
      '127',
      '254',
      '381',
    ]);
    expect(workbook.sheets[0]?.validations.some(({ formulas }) => formulas.some(callsOurs))).toBe(true);
  });

  it.each(['native', 'values'] as const)('come back from a copy of kind %s', async (as) => {
    const { workbook, copy } = await shared(as);
    const report = await restoreWorkbook(copy, worksheetFunctions);
    expect(report).toMatchObject({ changed: [], problems: [] });
    expect(outside(readWorkbook(report?.bytes ?? new Uint8Array(), ids))).toEqual(outside(workbook));
  });

  it('come back after rows were inserted and the sheet got another name', async () => {
    const { workbook, copy } = await shared('native');
    const moved = (book: Workbook): Workbook => {
      const known = knownFunctions(ids);
      const row = changeStructure(
        book,
        { do: 'insert', what: 'rows', sheet: 'Seat', at: 0, count: 2 },
        known,
      );
      return changeStructure(row, { do: 'renameSheet', sheet: 'Seat', name: 'My seat' }, known);
    };
    const report = await restoreWorkbook(moved(copy), worksheetFunctions);
    expect(report).toMatchObject({ changed: [], problems: [] });
    expect(outside(readWorkbook(report?.bytes ?? new Uint8Array(), ids))).toEqual(outside(moved(workbook)));
  });
});

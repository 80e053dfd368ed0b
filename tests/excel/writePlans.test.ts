import { beforeEach, describe, expect, it, vi } from 'vitest';
import { worksheetFunctions } from '../../src/call/functions';
import { findDefinition } from '../../src/call/findDefinition';
import { areaContains, parseCell, type Area } from '../../src/cells/address';
import { CellError } from '../../src/cells/value';
import { addedText, writePlans } from '../../src/excel/writePlans';
import { planDesign } from '../../src/forms/design';
import { planForm } from '../../src/forms/form';
import { groundOf } from '../../src/forms/groundOf';
import { newDesign } from '../../src/forms/newDesign';
import { planNewSheets } from '../../src/forms/newSheets';
import type { FormPlan } from '../../src/forms/plan';
import { SCALE } from '../../src/forms/scale';
import { sections } from '../../src/forms/sections';
import type { Section } from '../../src/forms/sections/section';
import { writeForm as writeInFile } from '../../src/forms/write';
import { newWorkbook, readWorkbook } from '../../src/package';
import type { Workbook } from '../../src/package/model';
import { checksOf } from '../support/checks';
import { printOf, styleWithLines, widthsOf } from './seenSheet';
import { installStandIn, type StandIn } from './standIn/install';
import { StandInWorkbook } from './standIn/workbook';

const writeByExcel = (plan: FormPlan): Promise<string> => writePlans({ sheets: [], plans: [plan] });

let excel: StandInWorkbook;
let standIn: StandIn;

beforeEach(() => {
  excel = new StandInWorkbook();
  const globals: Record<string, unknown> = {};
  standIn = installStandIn(globals, (steps) => excel.execute(steps));
  for (const [name, value] of Object.entries(globals)) vi.stubGlobal(name, value);
});

const ids = worksheetFunctions.map(({ id }) => id);
const opened = (): Workbook => readWorkbook(excel.file(), ids);

const planIn = (name: string, workbook: Workbook, row = 1): FormPlan => {
  const definition = findDefinition(name);
  const { given = {} } = checksOf(definition)[0] ?? {};
  return planForm(definition, groundOf(workbook, 'Sheet1'), { at: { row, column: 1 }, given, source: true });
};

/** All that a person sees of a form and works with, in words that do not depend on how the file was made. */
function seen(workbook: Workbook, area: Area, sheetName = 'Sheet1') {
  const sheet = workbook.sheets.find(({ name }) => name === sheetName);
  if (!sheet) throw new Error(`no sheet ${sheetName}`);
  const { cells, merges, validations, conditionalFormats, rows } = sheet;
  const style = styleWithLines(workbook, sheet);
  return {
    cells: cells
      .filter(({ row, column }) => areaContains(area, row, column))
      .map(({ row, column, value, formula }) => ({
        at: `${row} ${column}`,
        value: typeof value === 'number' ? value.toPrecision(10) : value,
        formula,
        style: style(row, column),
      })),
    merges,
    rules: validations.map(({ areas, kind, choices, formulas, refusal }) => ({
      areas,
      kind,
      choices,
      formulas: choices ? [] : formulas,
      refusal,
    })),
    // Those of one area in the order in which they count.
    colors: [...conditionalFormats]
      .sort((a, b) => (a.areas[0]?.top ?? 0) - (b.areas[0]?.top ?? 0))
      .map(({ areas, formulas, style }) => ({ areas, formulas, style })),
    heights: rows.map(({ row, height }) => [row, height]),
    widths: widthsOf(sheet),
    print: printOf(workbook, sheetName),
    // Excel writes no quotes around the name of a sheet that needs none.
    names: workbook.names.map(({ name, formula }) => [name, formula.replace(/^'(\w+)'!/, '$1!')]).sort(),
    lists: workbook.sheets
      .filter(({ name }) => name === 'Lists')
      .map(({ name, cells: words }) => [name, words.map(({ value }) => value)]),
  };
}

const sectionsNamed = (...wanted: string[]): readonly Section[] =>
  sections.filter(({ id }) => wanted.includes(id));

/** Where a verdict does not hold, or a formula has no value. */
const faultsOn = (workbook: Workbook, sheetName: string): string[] =>
  (workbook.sheets.find(({ name }) => name === sheetName)?.cells ?? []).flatMap(({ row, value, formula }) =>
    formula !== undefined && (value instanceof CellError || SCALE.slice(1).some(([word]) => word === value))
      ? [`${sheetName} ${row + 1} ${formula}: ${String(value instanceof CellError ? value.message : value)}`]
      : [],
  );

describe('a design of sections that is made in Excel', () => {
  it('is what the writer of files makes of it, all sections together, within one request', async () => {
    const wish = { sections, system: 'mm' } as const;
    const design = planNewSheets(wish, opened());
    const wanted = await newDesign(wish, worksheetFunctions);
    await writePlans(design);
    const made = opened();
    for (const { sheet, area } of design.plans)
      expect(seen(made, area, sheet)).toEqual(seen(wanted, area, sheet));
    for (const { name } of design.sheets) {
      const [ours, theirs] = [made, wanted].map(({ sheets }) => {
        const { frozen, showsGridlines, tabColor } = sheets.find((one) => one.name === name) ?? {};
        return { frozen, showsGridlines, tabColor };
      });
      expect(ours).toEqual(theirs);
    }
    // Excel takes 5 MB on the web.
    expect(Math.max(...excel.sizes)).toBeLessThan(2.5e6);
    expect(excel.undos).toHaveLength(1);
  }, 120_000);

  it('gives its sheets and names a number where the workbook has them, and calculates with its own', async () => {
    const workbook = () =>
      planNewSheets({ sections: sectionsNamed('cutters', 'seat'), system: 'mm' }, opened());
    await writePlans(workbook());
    const second = workbook();
    expect(second.sheets.map(({ name }) => name)).toEqual(['Design 2', 'Hand on 2']);
    await writePlans(second);
    // The first is another part by now.
    const draft = placeOfName('draft');
    excel.sheet('Design').type(draft.row, draft.column - 2, 0.5);
    await excel.execute([]);
    expect(faultsOn(opened(), 'Design')).not.toEqual([]);
    expect(faultsOn(opened(), 'Design 2')).toEqual([]);
    expect(faultsOn(opened(), 'Hand on 2')).toEqual([]);
    const formulas = opened().sheets.find(({ name }) => name === 'Design 2')?.cells;
    expect(formulas?.some(({ formula }) => formula?.startsWith('IF(B'))).toBe(true);
    expect(
      formulas?.some(({ formula }) => /\b(cut_speed|spindle_limit|units|draft)\b(?!_)/.test(formula ?? '')),
    ).toBe(false);
  });

  it('stands at the selected cell of a sheet, in the units of that sheet, beside a form', async () => {
    await writeByExcel(planIn('SEAT.SINK', opened()));
    const ground = groundOf(opened(), 'Sheet1');
    expect(() =>
      planDesign({ sections: sectionsNamed('seat'), system: 'mm' }, ground, { row: 4, column: 1 }),
    ).toThrow(/^The design sheet needs B5:H\d+ of "Sheet1", where B5 is not empty\. It fits at B\d+\.$/);
    const at = { row: 60, column: 1 };
    const { plan } = planDesign({ sections: sectionsNamed('seat', 'cutters'), system: 'mm' }, ground, at);
    expect(plan.names.map(({ name }) => name)).not.toContain('units_2');
    const before = opened();
    await writePlans({ sheets: [], plans: [plan] });
    const wanted = await writeInFile(before, plan, worksheetFunctions);
    expect({ ...seen(opened(), plan.area), heights: [] }).toEqual({
      ...seen(wanted, plan.area),
      heights: [],
    });
    expect(faultsOn(opened(), 'Sheet1')).toEqual([]);
    // Millimeters on the whole sheet, by the cell that the form brought.
    const units = placeOfName('units');
    excel.sheet('Sheet1').type(units.row, units.column, 'mm');
    await excel.execute([]);
    expect(faultsOn(opened(), 'Sheet1')).toEqual([]);
    excel.undo();
    excel.undo();
    expect(
      opened()
        .names.map(({ name }) => name)
        .filter((name) => name.startsWith('cut_')),
    ).toEqual([]);
  });

  it('is made where no printer is, and says what was refused', async () => {
    const design = planNewSheets({ sections: sectionsNamed('holes'), system: 'in' }, opened());
    excel.hasPrinter = false;
    expect(await writePlans(design)).toBe(
      'Excel refused to set up its pages for printing: No printers are installed.',
    );
    expect(faultsOn(opened(), 'Design')).toEqual([]);
  });

  it('says how to be rid of it in an Excel that does not undo', async () => {
    const design = planNewSheets({ sections: sectionsNamed('holes'), system: 'in' }, opened());
    expect(addedText(design)).toBe('Made: Design, Hand on. One step of undo takes them back.');
    standIn.lacks.add('ExcelApi 1.20');
    await writePlans(design);
    expect(addedText(design)).toContain('delete the sheets and their names');
  });
});

/** The cell that a name of the workbook stands for. */
function placeOfName(name: string): { row: number; column: number } {
  const place = parseCell((excel.names.get(name) ?? '').split('!')[1] ?? '');
  if (!place) throw new Error(`no name ${name}`);
  return place;
}

describe('a form that is written into Excel', () => {
  it.each(['SEAT.FORCE', 'TAP.DRILL', 'STACK.RSS', 'SHRINK.CAVITY', 'PRESS.SCREWCLAMP'])(
    'of %s is what the writer of files makes of it',
    async (name) => {
      const plan = planIn(name, opened());
      const wanted = await writeInFile(newWorkbook(), plan, worksheetFunctions);
      await writeByExcel(plan);
      expect(seen(opened(), plan.area)).toEqual(seen(wanted, plan.area));
    },
  );

  it('is one step to undo', async () => {
    const before = seen(opened(), { top: 0, left: 0, bottom: 100, right: 20 });
    await writeByExcel(planIn('TAP.DRILL', opened()));
    expect(excel.undos).toHaveLength(1);
    excel.undo();
    expect({ ...seen(opened(), { top: 0, left: 0, bottom: 100, right: 20 }), heights: [] }).toEqual({
      ...before,
      heights: [],
    });
  });

  it('keeps a thread that is typed into it a thread', async () => {
    const plan = planIn('TAP.DRILL', opened());
    await writeByExcel(plan);
    const thread = plan.names.find(({ name }) => name === 'thread');
    if (!thread) throw new Error('no thread');
    const sheet = excel.sheet('Sheet1');
    const { top, left } = thread.area;
    // The name stands for the value; what is typed stands two columns before it where it has a unit.
    const entry = [0, 1, 2]
      .map((by) => left - by)
      .find((column) => sheet.looks.get(`${top} ${column}`)?.numberFormat === '@');
    sheet.type(top, entry ?? -1, '10-32');
    expect(sheet.cells.get(`${top} ${entry ?? -1}`)?.value).toBe('10-32');
  });

  it('says in words that a sheet is protected or filled, and where the form fits', async () => {
    const plan = planIn('SEAT.FORCE', opened());
    await writeByExcel(plan);
    expect(() => planIn('SEAT.FORCE', opened())).toThrow(/is not empty\. It fits at B\d+\.$/);
    excel.sheet('Sheet1').protection.protected = true;
    await expect(writeByExcel(planIn('SEAT.RELEASE', newWorkbook()))).rejects.toThrow('protected');
  });
});

import { beforeEach, describe, expect, it, vi } from 'vitest';
import { worksheetFunctions } from '../../src/call/functions';
import { findDefinition } from '../../src/call/findDefinition';
import { areaContains, type Area } from '../../src/cells/address';
import { writeForm as writeByExcel } from '../../src/excel/writeForm';
import { planForm } from '../../src/forms/form';
import { groundOf } from '../../src/forms/groundOf';
import type { FormPlan } from '../../src/forms/plan';
import { writeForm as writeInFile } from '../../src/forms/write';
import { newWorkbook, readWorkbook } from '../../src/package';
import type { Workbook } from '../../src/package/model';
import { checksOf } from '../support/checks';
import { installStandIn } from './standIn/install';
import { StandInWorkbook } from './standIn/workbook';

let excel: StandInWorkbook;

beforeEach(() => {
  excel = new StandInWorkbook();
  const globals: Record<string, unknown> = {};
  installStandIn(globals, (steps) => excel.execute(steps));
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
function seen(workbook: Workbook, area: Area) {
  const sheet = workbook.sheets.find(({ name }) => name === 'Sheet1');
  if (!sheet) throw new Error('no sheet');
  const { cells, merges, validations, conditionalFormats, rows } = sheet;
  return {
    cells: cells
      .filter(({ row, column }) => areaContains(area, row, column))
      .map(({ row, column, value, formula, style }) => ({
        at: `${row} ${column}`,
        value: typeof value === 'number' ? value.toPrecision(10) : value,
        formula,
        style: workbook.styles[style],
      })),
    merges,
    rules: validations.map(({ areas, kind, choices, formulas, refusal }) => ({
      areas,
      kind,
      choices,
      formulas: choices ? [] : formulas,
      refusal,
    })),
    colors: conditionalFormats.map(({ areas, formulas, style }) => ({ areas, formulas, style })),
    heights: rows.map(({ row, height }) => [row, height]),
    // Excel writes no quotes around the name of a sheet that needs none.
    names: workbook.names.map(({ name, formula }) => [name, formula.replace(/^'(\w+)'!/, '$1!')]).sort(),
    lists: workbook.sheets
      .filter(({ name }) => name !== 'Sheet1')
      .map(({ name, cells: words }) => [name, words.map(({ value }) => value)]),
  };
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

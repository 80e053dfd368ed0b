import { describe, expect, it } from 'vitest';
import { worksheetFunctions } from '../../src/call/functions';
import { findDefinition } from '../../src/call/findDefinition';
import { worksheetFunction } from '../../src/call/worksheet';
import { catalogue } from '../../src/catalogue';
import { parseCell, areaContains } from '../../src/cells/address';
import { CellError, type Argument, type CellValue } from '../../src/cells/value';
import { inputsOf, takesRange, type Definition } from '../../src/core/define';
import type { System } from '../../src/core/quantity';
import { planForm, joinable, type FormOptions } from '../../src/forms/form';
import { absoluteArea, groundOf } from '../../src/forms/groundOf';
import { cellName } from '../../src/forms/names';
import { CannotWrite, type FormPlan } from '../../src/forms/plan';
import { SCALE } from '../../src/forms/scale';
import { writeForm } from '../../src/forms/write';
import { newWorkbook, readWorkbook, saveWorkbook } from '../../src/package';
import { addSheets } from '../../src/package/author';
import { cellFinder, type Cell, type Sheet, type Workbook } from '../../src/package/model';
import { CalculatedWorkbook } from '../../src/workbook/calculated';
import { recalculate } from '../../src/workbook/recalculate';
import { checksOf } from '../support/checks';
import { foreignLike, own } from './workbooks';

const ids = worksheetFunctions.map(({ id }) => id);

const given = (definition: Definition): FormOptions['given'] => checksOf(definition)[0]?.given ?? {};

const plan = (
  name: string,
  workbook: Workbook,
  sheet: string,
  options: Partial<FormOptions> = {},
): FormPlan =>
  planForm(findDefinition(name), groundOf(workbook, sheet), {
    at: { row: 0, column: 0 },
    given: given(findDefinition(name)),
    ...options,
  });

const finder = (workbook: Workbook, sheet: string) => {
  const found = workbook.sheets.find(({ name }) => name === sheet);
  if (!found) throw new Error(`no sheet ${sheet}`);
  return cellFinder(found);
};

/** What the core answers for what stands in the entered cells of a form. */
function coreAnswer(
  definition: Definition,
  form: FormPlan,
  cell: (row: number, column: number) => CellValue,
  system: System,
): readonly CellValue[] {
  const typed = (row: number, valueColumn: number): CellValue => {
    const value = cell(row, valueColumn - 2);
    const unit = cell(row, valueColumn - 1);
    return typeof value === 'number' && typeof unit === 'string' && unit !== '–'
      ? `${value} ${unit.replace('Δ', '')}`
      : value;
  };
  const args = inputsOf(definition).map(({ name, reading }): Argument => {
    const named = form.names.find(
      (one) => one.name === cellName(name) || one.name.startsWith(`${cellName(name)}_`),
    );
    if (!named) return undefined;
    const { top, bottom, left } = named.area;
    const rows = Array.from({ length: bottom - top + 1 }, (_, i) => [typed(top + i, left)]);
    return takesRange(reading)
      ? rows.filter(([one]) => one !== null && one !== '')
      : [[rows[0]?.[0] ?? null]];
  });
  return worksheetFunction(definition).call([...args, [[system]]])[0] ?? [];
}

function compare(definition: Definition, form: FormPlan, workbook: Workbook, system: System): string[] {
  const cellAt = finder(workbook, form.sheet);
  const cell = (row: number, column: number) => cellAt(row, column)?.value ?? null;
  const faults: string[] = [];
  const wanted = coreAnswer(definition, form, cell, system);
  const results = form.names.filter(({ name }) =>
    new RegExp(`^${cellName(definition.name)}(_\\d+)*$`).test(name),
  );
  if (results.length !== wanted.length) faults.push(`${definition.name} has ${results.length} results`);
  results.forEach(({ area }, i) => {
    const [ours, core] = [cell(area.top, area.left), wanted[i] ?? null];
    const same =
      typeof ours === 'number' && typeof core === 'number'
        ? Math.abs(ours - core) <= 1e-9 * Math.max(Math.abs(core), 1e-9)
        : ours === core;
    if (!same || core instanceof CellError)
      faults.push(
        `${definition.name} in ${system}: form ${JSON.stringify(ours)}, core ${JSON.stringify(core)}`,
      );
  });
  for (const { row, column, formula, value } of workbook.sheets.find(({ name }) => name === form.sheet)
    ?.cells ?? []) {
    if (formula !== undefined && areaContains(form.area, row, column) && value instanceof CellError)
      if (!formula.includes('SHOW.MARGIN')) faults.push(`${definition.name} ${formula}: ${value.message}`);
  }
  const words = SCALE.map(([word]) => word as CellValue);
  for (const { top, left } of form.verdicts)
    if (!words.includes(cell(top, left)))
      faults.push(`${definition.name}: verdict ${String(cell(top, left))}`);
  return faults;
}

/** A sheet that forms are written to, in the units that they then have. */
interface Field {
  readonly what: string;
  readonly fresh: () => Workbook;
  readonly sheet: string;
  readonly system: System;
  readonly options: Partial<FormOptions>;
}

const FIELDS: readonly Field[] = [
  { what: 'an empty workbook', fresh: newWorkbook, sheet: 'Sheet1', system: 'in', options: { source: true } },
  {
    what: 'a design sheet of ours, in the units of that sheet',
    fresh: own,
    sheet: 'Insert',
    system: 'mm',
    options: { at: { row: 11, column: 0 } },
  },
  {
    what: 'a sheet of somebody else, with units of its own',
    fresh: foreignLike,
    sheet: 'My sheet',
    system: 'mm',
    options: { at: { row: 9, column: 2 }, system: 'mm' },
  },
];

/** The cells of a plan among those of its workbook, calculated without a file. */
function calculated(workbook: Workbook, form: FormPlan): Workbook {
  const sheets = workbook.sheets.map((sheet) => {
    const cells = form.cells.map(({ row, column, value = null, formula }) => ({
      row,
      column,
      value,
      ...(formula !== undefined && { formula }),
      style: 0,
    }));
    return sheet.name === form.sheet ? { ...sheet, cells: [...sheet.cells, ...cells] } : sheet;
  });
  const names = form.names.map(({ name, area }) => ({
    name,
    formula: `'${form.sheet}'!${absoluteArea(area)}`,
    hidden: false,
  }));
  const whole = { ...workbook, sheets, names: [...workbook.names, ...names] };
  const book = CalculatedWorkbook.of(whole, worksheetFunctions);
  const value = (sheet: Sheet, cell: Cell) => book.at(sheet, cell.row, cell.column);
  return {
    ...whole,
    sheets: sheets.map((sheet) => ({
      ...sheet,
      cells: sheet.cells.map((cell) => ({ ...cell, value: value(sheet, cell) })),
    })),
  };
}

describe('the form of every function', () => {
  it.each(FIELDS)(
    'gives what the core gives on $what',
    ({ fresh, sheet, system, options }) => {
      const workbook = fresh();
      const faults = catalogue.flatMap((definition) => {
        const form = plan(definition.name, workbook, sheet, options);
        return compare(definition, form, calculated(workbook, form), system);
      });
      expect(faults).toEqual([]);
    },
    180_000,
  );

  it('gives the same from the file that it was written to, and leaves the workbook itself for undo', async () => {
    const faults: string[] = [];
    for (const [i, definition] of catalogue.entries()) {
      const field = FIELDS[i % FIELDS.length];
      if (!field) continue;
      const workbook = field.fresh();
      const before = saveWorkbook(workbook, []);
      const form = plan(definition.name, workbook, field.sheet, field.options);
      const written = readWorkbook(
        saveWorkbook(await writeForm(workbook, form, worksheetFunctions), []),
        ids,
      );
      faults.push(...compare(definition, form, written, field.system));
      if (Buffer.compare(saveWorkbook(workbook, []), before) !== 0)
        faults.push(`${definition.name} changed the workbook itself`);
    }
    expect(faults).toEqual([]);
  }, 300_000);
});

describe('a form', () => {
  const cellsOf = (workbook: Workbook, sheet: string) => {
    const cellAt = finder(workbook, sheet);
    return (address: string) => {
      const place = parseCell(address);
      return place && cellAt(place.row, place.column);
    };
  };

  it('keeps its part when the units of its sheet change: entries keep their own', async () => {
    const written = await writeForm(
      newWorkbook(),
      plan('SEAT.FORCE', newWorkbook(), 'Sheet1'),
      worksheetFunctions,
    );
    const at = (workbook: Workbook, name: string) => {
      const { formula = '' } = workbook.names.find((one) => one.name === name) ?? {};
      return cellsOf(workbook, 'Sheet1')(formula.split('!')[1] ?? '');
    };
    const units = written.names.find(({ name }) => name === 'units')?.formula.split('!')[1] ?? '';
    const place = parseCell(units) ?? { row: 0, column: 0 };
    const other = readWorkbook(saveWorkbook(written, [{ sheet: 'Sheet1', ...place, value: 'mm' }]), ids);
    const results = await recalculate(other, worksheetFunctions);
    const metric = readWorkbook(saveWorkbook(other, results), ids);
    const [before, after] = [at(written, 'seat_force')?.value, at(metric, 'seat_force')?.value];
    expect(Number(after) / Number(before)).toBeCloseTo(4.4482216152605, 9);
  });

  it('shares inputs of the same name and kind on request, and no others', async () => {
    const workbook = own();
    const ground = groundOf(workbook, 'Insert');
    const found = joinable(findDefinition('SEAT.FORCE'), ground).map(({ input }) => input);
    expect(found).toEqual(['draft', 'friction']);
    // Its wall is in feet, which is no unit of a form.
    expect(joinable(findDefinition('COOL.TIME'), ground)).toEqual([]);
    const form = plan('SEAT.FORCE', workbook, 'Insert', { at: { row: 11, column: 0 }, join: 'all' });
    expect(form.names.map(({ name }) => name)).toEqual(['push', 'seat_force']);
    const written = await writeForm(workbook, form, worksheetFunctions);
    const result = written.sheets[0]?.cells.find(({ formula }) => formula?.startsWith('MOLD.SEAT.FORCE('));
    expect(result?.formula).toMatch(/^MOLD\.SEAT\.FORCE\(push,D\d+,D\d+,\$D\$4\)$/);
    const push = written.sheets[0]?.cells.find(({ formula }) => formula?.includes('UNIT.CONVERT'))?.value;
    const [[core]] = worksheetFunction(findDefinition('SEAT.FORCE')).call([
      [[push ?? null]],
      [[5]],
      [[0.15]],
      [['mm']],
    ]) as [[number]];
    expect(result?.value).toBeCloseTo(core, 9);
  });

  it('shares an input of another sheet in its own units', async () => {
    const first = await writeForm(
      newWorkbook(),
      plan('SEAT.SINK', newWorkbook(), 'Sheet1', { system: 'mm' }),
      worksheetFunctions,
    );
    const two = addSheets(first, { sheets: [{ name: 'Other', cells: {} }] });
    const form = plan('SEAT.STIFFNESS', two, 'Other', { system: 'in', join: ['seatRadius', 'insertMetal'] });
    const written = await writeForm(two, form, worksheetFunctions);
    const values = written.sheets
      .find(({ name }) => name === 'Other')
      ?.cells.filter(({ formula }) => /\b(seat_radius|insert_metal)\b/.test(formula ?? ''))
      .map(({ value }) => (typeof value === 'number' ? Number((value * 25.4).toPrecision(6)) : value));
    expect(values?.slice(0, 2)).toEqual([10, 'P20']);
  });

  it('gives a name that is taken a number', async () => {
    const once = await writeForm(
      newWorkbook(),
      plan('SEAT.FORCE', newWorkbook(), 'Sheet1'),
      worksheetFunctions,
    );
    const again = plan('SEAT.FORCE', once, 'Sheet1', { at: { row: 20, column: 0 } });
    expect(again.names.map(({ name }) => name)).toEqual(['push_2', 'draft_2', 'friction_2', 'seat_force_2']);
  });

  it('never overwrites: it tells what is in the way and where it fits', () => {
    const workbook = own();
    const write = () => plan('SEAT.FORCE', workbook, 'Insert', { at: { row: 6, column: 0 } });
    expect(write).toThrow(CannotWrite);
    expect(write).toThrow(/^The form needs A7:G\d+ of "Insert", where A7 is not empty\. It fits at A10\.$/);
    const foreign = () => plan('SEAT.FORCE', foreignLike(), 'My sheet', { at: { row: 4, column: 1 } });
    expect(foreign).toThrow('where C5 is not empty. It fits at B7.');
    expect(() => plan('SEAT.FORCE', workbook, 'Insrt')).toThrow(
      'The workbook has no sheet "Insrt"; it has "Insert".',
    );
  });

  it('says of a protected sheet that it is, unless its cells are open', () => {
    const sheet = (locked: boolean) =>
      newWorkbook({
        sheets: [
          {
            name: 'Kept',
            protect: true,
            cells: Object.fromEntries(
              Array.from({ length: 20 * 7 }, (_, i) => [
                `${'ABCDEFG'[i % 7] ?? ''}${Math.floor(i / 7) + 1}`,
                { style: 'open' },
              ]),
            ),
          },
        ],
        styles: { open: { locked } },
      });
    expect(() => plan('SEAT.FORCE', sheet(true), 'Kept')).toThrow(
      'The sheet "Kept" is protected and A1 is locked',
    );
    expect(plan('SEAT.FORCE', sheet(false), 'Kept').area.bottom).toBeLessThan(20);
  });

  it('keeps what a sheet has: its rules, colors, merged cells and widths that suffice', async () => {
    const workbook = foreignLike();
    const written = await writeForm(
      workbook,
      plan('SEAT.SINK', workbook, 'My sheet', { at: { row: 9, column: 1 } }),
      worksheetFunctions,
    );
    const [before, after] = [workbook.sheets[1], written.sheets[1]];
    expect(after?.validations.slice(0, 1)).toEqual(before?.validations);
    expect(after?.conditionalFormats.slice(0, 1)).toEqual(before?.conditionalFormats);
    expect(after?.merges[0]).toEqual(before?.merges[0]);
    expect(after?.columns.find(({ first }) => first === 0)).toEqual(before?.columns[0]);
    expect(written.sheets[0]).toEqual(workbook.sheets[0]);
    expect(written.names.slice(0, 2)).toEqual(workbook.names);
  });

  it('leaves blank cells blank: an input without an entry is missing, not zero', async () => {
    const written = await writeForm(
      newWorkbook(),
      plan('SEAT.FORCE', newWorkbook(), 'Sheet1'),
      worksheetFunctions,
    );
    const push = parseCell(written.names.find(({ name }) => name === 'push')?.formula.split('!')[1] ?? '');
    const blank = readWorkbook(
      saveWorkbook(written, [{ sheet: 'Sheet1', row: push?.row ?? 0, column: 1, value: null }]),
      ids,
    );
    const results = await recalculate(blank, worksheetFunctions);
    const result = results.find(({ formula }) => formula.startsWith('MOLD.SEAT.FORCE('));
    expect(result?.value).toBeInstanceOf(CellError);
    const verdict = results.find(({ formula }) => formula.includes('in range'));
    expect(verdict?.value).toBe('? not known');
  });
});

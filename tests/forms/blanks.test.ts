import { describe, expect, it } from 'vitest';
import { findDefinition } from '../../src/call/findDefinition';
import { worksheetFunctions } from '../../src/call/functions';
import { worksheetFunction } from '../../src/call/worksheet';
import type { WorksheetFunction } from '../../src/call/worksheetFunction';
import { catalogue } from '../../src/catalogue';
import { CellError, type Argument, type CellValue } from '../../src/cells/value';
import { inputsOf, type AnyInput, type Definition } from '../../src/core/define';
import { planDesign } from '../../src/forms/design';
import { planForm } from '../../src/forms/form';
import { absoluteArea, groundOf, newGround } from '../../src/forms/groundOf';
import { STYLES, typedStyle } from '../../src/forms/looks';
import type { FormPlan, Place } from '../../src/forms/plan';
import { cellName } from '../../src/forms/names';
import { sections } from '../../src/forms/sections';
import { newWorkbook } from '../../src/package';
import type { Cell, Workbook } from '../../src/package/model';
import { CalculatedWorkbook } from '../../src/workbook/calculated';
import { checksOf } from '../support/checks';
import { own } from './workbooks';

/** Excel hands a blank cell that an argument refers to over as zero; office-js issues 4702, 1951. */
const asExcelCalls: readonly WorksheetFunction[] = worksheetFunctions.map((fn) => ({
  ...fn,
  call: (args) => fn.call(args.map(withZeros)),
}));

const withZeros = (argument: Argument): Argument => argument?.map((row) => row.map((value) => value ?? 0));

type Typed = ReadonlyMap<string, CellValue>;
const key = (row: number, column: number): string => `${row} ${column}`;

/** What the cells of a plan show when some of them hold something else. */
function shown(plan: FormPlan, typed: Typed, functions: readonly WorksheetFunction[], under = newWorkbook()) {
  const cells = plan.cells.map(({ row, column, value = null, formula }): Cell => {
    const other = typed.get(key(row, column));
    if (other !== undefined) return { row, column, value: other, style: 0 };
    return { row, column, value, style: 0, ...(formula !== undefined && { formula }) };
  });
  const names = plan.names.map(({ name, area }) => ({
    name,
    formula: `'${plan.sheet}'!${absoluteArea(area)}`,
    hidden: false,
  }));
  const [first] = under.sheets;
  if (!first) throw new Error('no sheet');
  const sheet = { ...first, name: plan.sheet, cells: [...first.cells, ...cells] };
  const workbook: Workbook = { ...under, sheets: [sheet], names: [...under.names, ...names] };
  const book = CalculatedWorkbook.of(workbook, functions);
  return cells
    .filter(({ formula }) => formula !== undefined)
    .map(({ row, column, formula }) => {
      const value = book.at(sheet, row, column);
      return { row, formula, value: value instanceof CellError ? value.code : value };
    });
}

const TYPED = new Set<unknown>([
  typedStyle,
  STYLES.typedWords,
  STYLES.typedNumber,
  STYLES.typedUnit,
  STYLES.typedName,
]);
const typedCells = (plan: FormPlan): readonly { row: number; column: number }[] =>
  plan.cells.filter(
    ({ look, value, formula }) => TYPED.has(look) && (value !== undefined || formula !== undefined),
  );

/** Cells whose answer in Excel is another one than on the page. */
const differences = (plan: FormPlan, typed: Typed, under?: Workbook): string[] => {
  const [page, excel] = [worksheetFunctions, asExcelCalls].map((functions) =>
    shown(plan, typed, functions, under),
  );
  return (page ?? []).flatMap(({ formula, value }, i) =>
    value === excel?.[i]?.value
      ? []
      : [`${String(formula)}: ${String(value)} on the page, ${String(excel?.[i]?.value)} in Excel`],
  );
};

const blanked = (cells: readonly Place[]): Typed =>
  new Map(cells.map(({ row, column }) => [key(row, column), null]));

const isLeftOut = ({ default: standard, sameAs }: AnyInput): boolean =>
  standard !== undefined || sameAs !== undefined;

/** The cells that a person types into, in the rows of inputs that stand for something when they are left out. */
const optionalCells = (definition: Definition, plan: FormPlan): readonly Place[] => {
  const names = new Set(
    inputsOf(definition)
      .filter(isLeftOut)
      .map(({ name }) => cellName(name)),
  );
  const rows = new Set(plan.names.filter(({ name }) => names.has(name)).map(({ area }) => area.top));
  return typedCells(plan).filter(({ row, column }) => rows.has(row) && column === 1);
};

describe('a cell that somebody has emptied', () => {
  it('is the default of an optional input, and never zero, in the form of every function and in Excel too', () => {
    const faults: string[] = [];
    for (const definition of catalogue) {
      const { given = {} } = checksOf(definition)[0] ?? {};
      const plan = planForm(definition, newGround('Sheet1'), { at: { row: 0, column: 0 }, given });
      const cells = optionalCells(definition, plan);
      if (cells.length === 0) continue;
      faults.push(...differences(plan, blanked(cells)).map((one) => `${definition.name} ${one}`));
      const args = inputsOf(definition).map((input): Argument => {
        const { name } = input;
        const first = isLeftOut(input) ? undefined : given[name];
        return first === undefined ? null : [first].flat().map((one) => [one as CellValue]);
      });
      const [core] = worksheetFunction(definition).call([...args, [['in']]])[0] ?? [];
      const name = plan.names.find((one) => one.name.startsWith(cellName(definition.name)));
      const own = name && shown(plan, blanked(cells), asExcelCalls).find(({ row }) => row === name.area.top);
      const isSame =
        typeof core === 'number' && typeof own?.value === 'number'
          ? Math.abs(own.value - core) <= 2e-2 * Math.abs(core)
          : (core instanceof CellError ? core.code : core) === own?.value;
      if (!isSame) faults.push(`${definition.name}: ${String(own?.value)}, without them ${String(core)}`);
    }
    expect(faults).toEqual([]);
  }, 120_000);

  it('is the same in Excel and on the page in every section: all of its inputs, then its units', () => {
    for (const section of sections) {
      const { plan } = planDesign({ sections: [section], system: 'in' }, newGround('Sheet1'));
      const cells = typedCells(plan);
      for (const column of [1, 2, 3])
        expect(differences(plan, blanked(cells.filter((cell) => cell.column === column)))).toEqual([]);
    }
  }, 120_000);

  it('is its default in a design sheet too, where all that takes it can do without, and the row says so', () => {
    const design = (section: (typeof sections)[number]) =>
      planDesign({ sections: [section], system: 'in' }, newGround('Sheet1')).plan;
    const press = sections.find(({ id }) => id === 'press');
    if (!press) throw new Error('no section');
    const plan = design(press);
    const named = (name: string) =>
      plan.names.find((one) => one.name === name)?.area ?? { top: -1, left: -1 };
    const [efficiency, melt] = [named('efficiency'), named('melt_pressure')];
    const emptied = blanked([{ row: efficiency.top, column: 1 }]);
    const at = (typed: Typed, row: number) =>
      shown(plan, typed, asExcelCalls).find((one) => one.row === row)?.value;
    expect(at(emptied, efficiency.top)).toBe(at(new Map(), efficiency.top));
    expect(at(emptied, melt.top)).toBe(at(new Map(), melt.top));
    const note = plan.cells.find(({ row, column }) => row === efficiency.top && column === 5)?.value;
    expect(note).toMatch(/Blank: 0\.85\.$/);
    // What a function needs stays needed.
    const bore = named('air_bore');
    expect(at(blanked([{ row: bore.top, column: 1 }]), melt.top)).toBe('#VALUE!');
  });

  it('is the same where a form shares it', () => {
    const under = own();
    const ground = groundOf(under, 'Insert');
    const { given = {} } = checksOf(findDefinition('SEAT.FORCE'))[0] ?? {};
    const plan = planForm(findDefinition('SEAT.FORCE'), ground, {
      at: { row: 11, column: 0 },
      given,
      join: 'all',
    });
    const draft = ground.inputs.find(({ name }) => name === 'draft');
    const [sheet] = under.sheets;
    if (!sheet || !draft) throw new Error('no draft');
    const cells = sheet.cells.filter(({ row, column }) => row !== draft.row || column !== draft.column);
    expect(cells.length).toBe(sheet.cells.length - 1);
    const emptied = { ...under, sheets: [{ ...sheet, cells }] };
    expect(differences(plan, new Map(), emptied)).toEqual([]);
    const result = shown(plan, new Map(), asExcelCalls, emptied).find(({ formula }) =>
      formula?.startsWith('MOLD.SEAT.FORCE('),
    );
    expect(result?.value).toBe('#VALUE!');
  });

  it('has no verdict that holds where the units of the sheet are gone', () => {
    const definition = findDefinition('SEAT.FORCE');
    const plan = planForm(definition, newGround('Sheet1'), {
      at: { row: 0, column: 0 },
      given: { push: '100 lbf', draft: 5, friction: 0.15 },
    });
    const units = plan.names.find(({ name }) => name === 'units')?.area;
    const typed = blanked(units ? [{ row: units.top, column: units.left }] : []);
    const verdict = shown(plan, typed, worksheetFunctions).find(({ formula }) =>
      formula?.includes('in range'),
    );
    expect(verdict?.value).toBe('? not known');
  });
});

import { areaAddress, areaContains, cellAddress } from '../cells/address';
import { CellError } from '../cells/value';
import type { Definition } from '../core/define';
import { SYSTEMS } from '../core/quantity';
import { Refusal } from '../core/refusal';
import type { Joinable } from '../forms/form';
import { CannotWrite, type FormPlan } from '../forms/plan';
import type { Workbook } from '../package/model';
import type { Arguments, Command, Output } from './command';
import { Failure } from './command';
import { refuseTaken } from './files';
import { nearestFunctions, withoutNamespace } from './functions';
import { openWorkbook, writeWorkbook } from './workbookFile';

export const form: Command = {
  usage: ['FUNCTION [IN.xlsx] -o OUT.xlsx [--at CELL] [--join [NAME,…]] [--source] [--units in|mm]'],
  summary:
    'Write a function into a workbook as a form: inputs with units, result, margin, verdict, cautions.',
  details: [
    'Each input becomes a row with a value to type over, its unit, what it takes and what it means; it gets a name such as seat_radius, with a number where that is taken. The values are those of the help’s example.',
    'The form follows the units cell of its sheet; where there is none, it brings its own. Nothing is overwritten: where its cells are not empty, the next place where it fits is told.',
    'Without a workbook a new one is written, never over another. The exit status is 1 if the result is in error, 2 if the form cannot be written.',
  ],
  options: {
    output: { type: 'string', short: 'o', value: 'OUT.xlsx', says: 'The workbook to write.' },
    at: {
      type: 'string',
      value: 'CELL',
      says: 'Where the form begins, such as Insert!B40; below all that stands on the first sheet unless told.',
    },
    join: {
      type: 'string',
      multiple: true,
      value: 'NAME,…',
      says: 'Inputs to share with the workbook, which has them by name already, such as draft,friction; or all.',
    },
    source: { type: 'boolean', says: 'Add a row that tells where the equation comes from.' },
    units: {
      type: 'string',
      value: 'in|mm',
      says: 'Units of a sheet that does not say its own; in unless told.',
    },
  },
  takes: [1, 2],
  async run(args, output) {
    try {
      return await run(args, output);
    } catch (error) {
      throw error instanceof Refusal || error instanceof CannotWrite ? new Failure(error.message) : error;
    }
  },
};

async function run(args: Arguments, output: Output): Promise<number> {
  const [wanted = '', input] = args.positionals;
  const target = args.text('output');
  if (target === undefined) throw new Failure('Name the workbook to write with -o.');
  const system = SYSTEMS.find((one) => one === (args.text('units') ?? 'in'));
  if (!system) throw new Failure(`--units takes in or mm, not ${args.text('units') ?? ''}.`);
  const definition = await definitionOf(wanted);
  if (input === undefined) await refuseTaken(target);
  const workbook = input === undefined ? await emptyWorkbook() : await openWorkbook(input);
  const [{ exampleCheck }, { joinable, planForm }, { groundOf, nextRow }, { writeForm }, { readCell }] =
    await Promise.all([
      import('../call/example'),
      import('../forms/form'),
      import('../forms/groundOf'),
      import('../forms/write'),
      import('../whatif/plan'),
    ]);
  const front = workbook.sheets[workbook.activeSheet];
  if (!front) throw new Failure(`${input ?? ''} has no sheet of cells.`);
  const at = args.text('at');
  const place = at === undefined ? { row: nextRow(front), column: 0 } : readCell(at, front.name);
  const ground = groundOf(workbook, 'sheet' in place ? place.sheet : front.name);
  const shared = joinable(definition, ground);
  const join = joinOf(
    args,
    shared.map((one) => one.input),
  );
  const plan = planForm(definition, ground, {
    at: place,
    given: exampleCheck(definition, await output.checks()).given,
    system,
    join,
    source: args.flag('source'),
  });
  const { worksheetFunctions } = await import('../call/functions');
  const written = await writeForm(workbook, plan, worksheetFunctions);
  await writeWorkbook(target, written, []);
  return report(plan, shared, join, written, target, output);
}

async function definitionOf(wanted: string): Promise<Definition> {
  const id = withoutNamespace(wanted);
  const { catalogue } = await import('../catalogue');
  const definition = catalogue.find(({ name, aliases = [] }) => [name, ...aliases].includes(id));
  if (definition) return definition;
  const nearest = await nearestFunctions(wanted);
  throw new Failure(`There is no form of ${wanted}; nearest functions: ${nearest.join(', ')}.`);
}

async function emptyWorkbook(): Promise<Workbook> {
  const { newWorkbook } = await import('../package');
  return newWorkbook({ sheets: [{ name: 'Design', gridlines: false, cells: {} }] });
}

/** The inputs to share; refuses one that the workbook has not. */
function joinOf(args: Arguments, shared: readonly string[]): readonly string[] {
  const wanted = args.texts('join').flatMap((text) => text.split(',').map((one) => one.trim()));
  if (wanted.includes('all')) return shared;
  const missing = wanted.find((one) => !shared.includes(one));
  if (missing !== undefined)
    throw new Failure(
      `The workbook has no input ${missing} of the same name and kind; it has ${shared.length === 0 ? 'none of this function' : shared.join(', ')}.`,
    );
  return wanted;
}

function report(
  { sheet, area, names }: FormPlan,
  shared: readonly Joinable[],
  join: readonly string[],
  written: Workbook,
  target: string,
  output: Output,
): number {
  output.out(
    `The form stands at ${sheet}!${areaAddress(area)}, named ${names.map(({ name }) => name).join(', ')}.`,
  );
  const others = shared.filter(({ input }) => !join.includes(input));
  if (others.length > 0)
    output.out(
      `The workbook has these inputs already: ${others.map(({ input, known }) => `${input} (${known.sheet}!${cellAddress(known.row, known.column)})`).join(', ')}. Share them with --join all.`,
    );
  const fault = written.sheets
    .find(({ name }) => name === sheet)
    ?.cells.find(
      ({ row, column, value, formula }) =>
        formula !== undefined && areaContains(area, row, column) && value instanceof CellError,
    );
  if (fault) output.out(`${cellAddress(fault.row, fault.column)} is in error: see moldsheet check.`);
  output.out(`Written to ${target}.`);
  return fault ? 1 : 0;
}

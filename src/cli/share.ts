import { existsSync } from 'node:fs';
import { basename, join } from 'node:path';
import type { RestoreReport, SharedGroup, ShareOptions } from '../share';
import type { Arguments, Command, Output } from './command';
import { Failure } from './command';
import { readBytes, refuseSame, writeBytes } from './files';
import { LIMITS } from './limits';
import { pageFolder } from './pageFolder';
import { table } from './table';
import { endsRight, openWorkbook, refuseWorkbookName } from './workbookFile';

/** The page without a workbook, among the files of the workbook page. */
const ONE_PAGE = 'one-page.html';

const FORMS: readonly ShareOptions['as'][] = ['native', 'values', 'both'];

export const share: Command = {
  usage: [
    'IN.xlsx -o OUT.xlsx [--as native|values|both] [--basis] [--one-cell] [--let]',
    'IN.xlsx -o OUT.html --as page',
    '--restore IN.xlsx -o OUT.xlsx',
  ],
  summary: 'Make a copy for somebody who has nothing installed, or turn one back.',
  details: [
    'A native copy has formulas that every spreadsheet program computes, and a sheet "How it is calculated" with a line for every step. What has no such formula is frozen to its value, colored and noted.',
    'A copy of values tells each formula, its unit and source in a note; "both" is a native copy with these notes.',
    'A page is one HTML file for any browser, a phone too: it calculates with the MOLD functions themselves, lets the marked inputs be changed, shows the work of a cell and prints.',
    'The exit status is 2 if a workbook cannot be read or written, or cannot be turned back.',
  ],
  options: {
    output: { type: 'string', short: 'o', value: 'OUT.xlsx', says: 'The workbook to write.' },
    as: {
      type: 'string',
      value: 'native|values|both|page',
      says: 'What the copy holds; native unless told.',
    },
    basis: { type: 'boolean', says: 'Add a sheet that tells what every number rests on.' },
    'one-cell': {
      type: 'boolean',
      says: 'Keep every formula in its cell, instead of a line a step on the sheet "How it is calculated".',
    },
    let: {
      type: 'boolean',
      says: 'In one cell, and name the parts of long formulas by LET; for programs since 2021.',
    },
    restore: {
      type: 'boolean',
      says: 'Put the original formulas back into a copy, and say what was changed in it.',
    },
  },
  takes: [1, 1],
  async run(args, output) {
    const [input = ''] = args.positionals;
    const target = args.text('output');
    if (target === undefined) throw new Failure('Name the file to write with -o.');
    if (args.text('as') === 'page') return await page(input, target, args, output);
    return args.flag('restore')
      ? await restore(input, target, output)
      : await copy(input, target, optionsOf(args), output);
  },
};

function optionsOf(args: Arguments): ShareOptions {
  const wanted = args.text('as') ?? 'native';
  const as = FORMS.find((one) => one === wanted);
  if (!as) throw new Failure(`--as takes native, values, both or page, not ${wanted}.`);
  return {
    as,
    basis: args.flag('basis'),
    oneCell: args.flag('one-cell'),
    let: args.flag('let'),
    limits: LIMITS,
  };
}

/** One HTML file that calculates, for a browser. */
async function page(input: string, target: string, args: Arguments, output: Output): Promise<number> {
  const other = ['basis', 'one-cell', 'let', 'restore'].find((name) => args.flag(name));
  if (other !== undefined) throw new Failure(`--${other} is for workbooks, not for a page.`);
  refuseWorkbookName(target, 'A page');
  const workbook = await openWorkbook(input);
  const [{ onePage, NoPage }, { worksheetFunctions }] = await Promise.all([
    import('../share/onePage'),
    import('../call/functions'),
  ]);
  const template = join(pageFolder(), ONE_PAGE);
  if (!existsSync(template))
    throw new Failure(`The page's own program is missing: ${template} should hold it.`);
  try {
    const html = onePage(workbook, worksheetFunctions, {
      file: basename(input),
      date: new Date().toLocaleDateString('sv'),
      template: new TextDecoder().decode(await readBytes(template)),
      limits: LIMITS,
    });
    await writeBytes(target, new TextEncoder().encode(html));
  } catch (error) {
    throw error instanceof NoPage ? new Failure(error.message) : error;
  }
  output.out(`Written to ${target}. It opens in any browser, without a network.`);
  return 0;
}

async function copy(input: string, target: string, options: ShareOptions, output: Output): Promise<number> {
  await refuseSame(input, target);
  const workbook = await openWorkbook(input);
  await endsRight(target, workbook);
  const [{ cellsInWords, groupsOf, shareWorkbook }, { worksheetFunctions }] = await Promise.all([
    import('../share'),
    import('../call/functions'),
  ]);
  const { bytes, cells, left } = await shareWorkbook(workbook, worksheetFunctions, options);
  const groups = groupsOf(cells);
  if (groups.length > 0) {
    const rows = groups.flatMap(({ how, reasons }) =>
      reasons.map(({ why, cells: own }) => [how, String(own.length), cellsInWords(own), why]),
    );
    output.out(table(['In the copy', 'Formulas', 'Cells', 'Why'], rows));
    output.out('');
  }
  for (const one of left) output.out(`Left as it is: ${one}`);
  output.out(summary(groups));
  await writeBytes(target, bytes);
  output.out(`Written to ${target}.`);
  return 0;
}

function summary(groups: readonly SharedGroup[]): string {
  if (groups.length === 0) return 'There is no MOLD formula in it.';
  const parts = groups.map(({ how, cells }) => `${cells.length} ${how}`);
  const all = groups.reduce((sum, { cells }) => sum + cells.length, 0);
  return `${all} ${all === 1 ? 'formula' : 'formulas'}: ${parts.join(', ')}.`;
}

async function restore(input: string, target: string, output: Output): Promise<number> {
  const workbook = await openWorkbook(input);
  await endsRight(target, workbook);
  const [{ restoreWorkbook }, { worksheetFunctions }] = await Promise.all([
    import('../share'),
    import('../call/functions'),
  ]);
  const report = await restoreWorkbook(workbook, worksheetFunctions);
  if (!report)
    throw new Failure(
      `${input} carries no original formulas: it is no shared copy, or its hidden sheet with them was taken away.`,
    );
  await writeBytes(target, report.bytes);
  output.out(changes(report));
  for (const problem of report.problems) output.out(problem);
  output.out(`${report.restored} formulas put back, of ${report.basis}. Written to ${target}.`);
  return 0;
}

function changes({ changed }: RestoreReport): string {
  if (changed.length === 0) return 'Nothing was changed in the copy.';
  const rows = changed.map(({ sheet, cell, before, now, kept }) => [
    `${sheet}!${cell}`,
    before,
    now,
    kept === undefined ? '' : `not put back: =${kept}`,
  ]);
  return `Changed in the copy, and kept:\n\n${table(['Cell', 'Was', 'Is', ''], rows)}`;
}

import { CellError } from '../cells/value';
import type { CellValue } from '../cells/value';
import { numberText } from '../core/format';
import { readCells } from '../whatif/plan';
import { runWhatIf } from '../whatif/run';
import type { Outcome } from '../whatif/run';
import { csvOf, headsOf, notesOf, plainText, tableOf } from '../whatif/table';
import { readValues } from '../whatif/values';
import type { Command } from './command';
import { Failure } from './command';
import { writeBytes } from './files';
import { again, keep } from './whatifKept';
import { table } from './table';
import { telling } from './telling';
import { CELLS_HELP, onCopy, OVER_FORMULAS, readSetting } from './whatifCells';

export const whatif: Command = {
  usage: [
    'FILE.xlsx --set CELL=VALUES [--set CELL=VALUES] --read CELL,… [-o TABLE.csv or OUT.xlsx]',
    '--again FILE.xlsx -o OUT.xlsx',
  ],
  summary: 'Tabulate what a workbook gives for other values of one or two of its cells.',
  details: [
    CELLS_HELP,
    'VALUES are a list such as 0.1,0.15,0.2, a row of steps from:to:step such as 3:15:1, or from..to for eleven values evenly apart. A list may hold words, "text in quotes", TRUE and FALSE.',
    'Into a workbook, -o OUT.xlsx, the table goes as a sheet behind the others, with a chart, and says itself when the design has changed since: then --again runs all such tables of a workbook again, with the values that stand in them.',
    'Everything is tried on a copy: the workbook is left as it is. The exit status is 1 if a result is in error, 2 if the work cannot be done.',
  ],
  options: {
    set: {
      type: 'string',
      multiple: true,
      value: 'CELL=VALUES',
      says: 'A cell to vary, and its values. Given twice, every combination is tried.',
    },
    read: {
      type: 'string',
      multiple: true,
      value: 'CELL,…',
      says: 'The cells or areas whose values are wanted.',
    },
    'over-formulas': OVER_FORMULAS,
    output: {
      type: 'string',
      short: 'o',
      value: 'TABLE.csv',
      says: 'Write the table as comma-separated values with all digits, or into a workbook, OUT.xlsx.',
    },
    again: { type: 'boolean', says: 'Run the what-ifs that stand in the workbook again.' },
  },
  takes: [1, 1],
  async run(args, output) {
    const [input = ''] = args.positionals;
    const target = args.text('output');
    const [sets, reads] = [args.texts('set'), args.texts('read')];
    if (args.flag('again')) {
      if (sets.length + reads.length > 0)
        throw new Failure(
          '--again takes what to vary and to read from the workbook: leave --set and --read out.',
        );
      if (target === undefined || !isWorkbook(target))
        throw new Failure('Name the workbook to write: -o OUT.xlsx.');
      return again(input, target, output);
    }
    if (sets.length === 0) throw new Failure('Name a cell to vary: --set Insert!C6=3:15:1.');
    if (reads.length === 0) throw new Failure('Name the cells to read: --read Insert!C20,Insert!C24.');
    const outcome = await onCopy(input, (copy, sheet, named) =>
      runWhatIf(
        copy,
        {
          vary: sets.map((text) => {
            const [cell, values] = readSetting(text, sheet, named);
            return { cell, values: readValues(values) };
          }),
          results: reads.flatMap((text) => readCells(text, sheet, named)),
          overFormulas: args.flag('over-formulas'),
        },
        { onProgress: telling(output, 'variations') },
      ),
    );
    if (target === undefined) output.out(`${printed(outcome)}\n`);
    else if (isWorkbook(target)) await keep(input, target, outcome);
    else await writeBytes(target, new TextEncoder().encode(csvOf(outcome)));
    output.out(notesOf(outcome).join('\n'));
    if (target !== undefined) output.out(`${outcome.rows.length} variations written to ${target}.`);
    return outcome.rows.some(({ results }) => results.some(isError)) ? 1 : 0;
  },
};

const isWorkbook = (path: string): boolean => /\.xls[xm]$/i.test(path);

const isError = (value: CellValue): boolean => value instanceof CellError;

function printed(outcome: Outcome): string {
  const rows = tableOf(outcome).rows.map((row) =>
    row.map((value) => (typeof value === 'number' ? Number(numberText(value)) : plainText(value))),
  );
  return table(headsOf(outcome), rows);
}

import { CellError } from '../cells/value';
import type { FormulaResult } from '../workbook/engine/recalculate';
import { cellAddress } from '../cells/address';
import type { Workbook } from '../package/model';
import { cellText } from './cellText';
import type { Command } from './command';
import { table } from './table';
import { openWorkbook, writeWorkbook } from './workbookFile';

export const recalc: Command = {
  name: 'recalc',
  usage: ['IN.xlsx [-o OUT.xlsx]'],
  summary: 'Recalculate a workbook and write the values back.',
  details: [
    'Prints the sheets with their formulas, changed values and errors, then every cell in error with its reason.',
    'Without -o nothing is written. The workbook read is left as it is, unless -o names it.',
    'The exit status is 1 if a cell is in error, 2 if the workbook cannot be read or written.',
  ],
  options: { output: { type: 'string', short: 'o', value: 'OUT.xlsx', says: 'The workbook to write.' } },
  takes: [1, 1],
  async run(args, output) {
    const [input = ''] = args.positionals;
    const target = args.text('output');
    const workbook = await openWorkbook(input);
    const [{ recalculate }, { worksheetFunctions }] = await Promise.all([
      import('../workbook/engine/recalculate'),
      import('../call/functions'),
    ]);
    const results = await recalculate(workbook, worksheetFunctions);
    if (target !== undefined) {
      await writeWorkbook(
        target,
        workbook,
        results.filter(({ changed }) => changed),
      );
    }
    output.out(report(workbook, results));
    output.out(
      target === undefined ? 'Nothing was written: name a workbook with -o.' : `Written to ${target}.`,
    );
    return results.some(({ value }) => value instanceof CellError) ? 1 : 0;
  },
};

function report(workbook: Workbook, results: readonly FormulaResult[]): string {
  const sheets = workbook.sheets.map(({ name }) => {
    const own = results.filter(({ sheet }) => sheet === name);
    const changed = own.filter((one) => one.changed);
    return [name, own.length, changed.length, own.filter(({ value }) => value instanceof CellError).length];
  });
  const troubles = results.flatMap(({ sheet, row, column, value }) =>
    value instanceof CellError
      ? [[`${sheet}!${cellAddress(row, column)}`, cellText(value), value.message]]
      : [],
  );
  return [
    table(['Sheet', 'Formulas', 'Changed', 'Errors'], sheets),
    ...(troubles.length > 0 ? ['', table(['Cell', 'Error', 'Why'], troubles)] : []),
    '',
  ].join('\n');
}

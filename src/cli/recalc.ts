import { CellError } from '../cells/value';
import { SINCE_BASIS } from './check';
import type { FormulaResult } from '../workbook/recalculate';
import { cellAddress } from '../cells/address';
import type { Workbook } from '../package/model';
import { cellText } from './cellText';
import type { Command } from './command';
import { LIMITS } from './limits';
import { table } from './table';
import { openWorkbook, writeWorkbook } from './workbookFile';

export const recalc: Command = {
  usage: ['IN.xlsx [-o OUT.xlsx]'],
  summary: 'Recalculate a workbook and write the values back.',
  details: [
    'Prints the sheets with their formulas, how many values changed, are errors or were kept, then every cell in error and every kept one with its reason.',
    'Values that are others since a function answers otherwise than when the workbook was saved are listed, old and new, with the reason; without -o this is a look before anything is written.',
    'Kept is the stored value of a formula that is not calculated here, such as one into another workbook.',
    'Without -o nothing is written. The workbook read is left as it is, unless -o names it.',
    'The exit status is 1 if a cell is in error, 2 if the workbook cannot be read or written.',
  ],
  options: { output: { type: 'string', short: 'o', value: 'OUT.xlsx', says: 'The workbook to write.' } },
  takes: [1, 1],
  async run(args, output) {
    const [input = ''] = args.positionals;
    const target = args.text('output');
    const workbook = await openWorkbook(input);
    const [{ recalculate }, { precisionWarning }, { worksheetFunctions }] = await Promise.all([
      import('../workbook/recalculate'),
      import('../workbook/precision'),
      import('../call/functions'),
    ]);
    const results = await recalculate(workbook, worksheetFunctions, LIMITS);
    if (target !== undefined) {
      await writeWorkbook(
        target,
        workbook,
        results.filter(({ changed }) => changed),
      );
    }
    const warning = precisionWarning(workbook);
    if (warning !== undefined) output.out(`${warning}\n`);
    output.out(report(workbook, results));
    output.out(
      target === undefined ? 'Nothing was written: name a workbook with -o.' : `Written to ${target}.`,
    );
    return results.some((one) => errorsIn(one).length > 0) ? 1 : 0;
  },
};

/** The cells in error of those that a formula fills. */
function errorsIn({ value, spill, row, column }: FormulaResult): { cell: string; error: CellError }[] {
  return (spill ?? [[value]]).flatMap((line, down) =>
    line.flatMap((error, across) =>
      error instanceof CellError ? [{ cell: cellAddress(row + down, column + across), error }] : [],
    ),
  );
}

function report(workbook: Workbook, results: readonly FormulaResult[]): string {
  const isError = (one: FormulaResult) => errorsIn(one).length > 0;
  const became = (one: FormulaResult) => one.changed && isError(one) && !(one.before instanceof CellError);
  const count = (of: (one: FormulaResult) => boolean, from = results) => from.filter(of).length;
  const isKept = ({ kept }: FormulaResult) => kept !== undefined;
  const sheets = workbook.sheets.map(({ name }) => {
    const own = results.filter(({ sheet }) => sheet === name);
    return [
      name,
      own.length,
      ...[({ changed }: FormulaResult) => changed, isError, isKept].map((of) => count(of, own)),
    ];
  });
  const cell = ({ sheet, row, column }: FormulaResult) => `${sheet}!${cellAddress(row, column)}`;
  const troubles = results.flatMap((one) =>
    one.kept === undefined
      ? errorsIn(one).map(({ cell, error }) => [`${one.sheet}!${cell}`, error.code, error.message])
      : [],
  );
  const kept = results.flatMap((one) =>
    one.kept === undefined ? [] : [[cell(one), cellText(one.before), one.kept]],
  );
  const since = results.flatMap((one) =>
    one.because.length > 0
      ? [[cell(one), cellText(one.before), cellText(one.value), one.because.join(' ')]]
      : [],
  );
  return [
    table(['Sheet', 'Formulas', 'Changed', 'Errors', 'Kept'], sheets),
    ...(troubles.length > 0 ? ['', table(['Cell', 'Error', 'Why'], troubles)] : []),
    ...(since.length > 0 ? ['', `${SINCE_BASIS}:`, '', table(['Cell', 'Stored', 'Now', 'Why'], since)] : []),
    ...(kept.length > 0 ? ['', table(['Cell', 'Kept', 'Why it is not calculated'], kept)] : []),
    '',
    `Values changed: ${count(({ changed }) => changed)}, to errors ${count(became)}; kept: ${count(isKept)}.`,
  ].join('\n');
}

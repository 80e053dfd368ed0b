import { cellText } from './cellText';
import type { Command } from './command';
import { LIMITS } from './limits';
import { table } from './table';
import { openWorkbook } from './workbookFile';

export const check: Command = {
  name: 'check',
  usage: ['IN.xlsx'],
  summary: 'Say what a person should know of a workbook before it is saved anew.',
  details: [
    'Lists the cells whose results differ from those stored, MOLD functions that do not exist, numbers that look like the other system of units, values outside an equation’s range, cautions, and formulas that are not calculated here, with the reason.',
    'Nothing is written.',
    'The exit status is 1 if a result differs, a function is unknown or a number looks like the other system, 2 if the workbook cannot be read.',
  ],
  options: {},
  takes: [1, 1],
  async run({ positionals: [input = ''] }, output) {
    const workbook = await openWorkbook(input);
    const [{ checkWorkbook }, { worksheetFunctions }, { BASIS_TEXT }] = await Promise.all([
      import('../workbook/check'),
      import('../call/functions'),
      import('../call/version'),
    ]);
    const report = checkWorkbook(workbook, worksheetFunctions, LIMITS);
    const section = (
      title: string,
      found: readonly { sheet: string; cell: string; says: string }[],
    ): void => {
      if (found.length === 0) return;
      output.out(`\n${title}\n`);
      output.out(
        table(
          ['Cell', 'What'],
          found.map(({ sheet, cell, says }) => [`${sheet}!${cell}`, says]),
        ),
      );
    };
    output.out(`${report.formulas} MOLD formulas, looked at with ${BASIS_TEXT}.`);
    if (report.changed.length > 0) {
      output.out('\nResults that differ from those stored\n');
      output.out(
        table(
          ['Cell', 'Stored', 'Now', 'Formula'],
          report.changed.map(({ sheet, cell, before, now, formula }) => [
            `${sheet}!${cell}`,
            cellText(before),
            cellText(now),
            `=${formula}`,
          ]),
        ),
      );
    }
    section('Unknown functions', report.unknown);
    section('Numbers that look like the other system of units', report.otherUnits);
    section('Outside the range of the equation', report.outside);
    section('Cautions', report.cautions);
    section('Not calculated here: the stored value stands', report.kept);
    const wrong = report.changed.length + report.unknown.length + report.otherUnits.length;
    if (wrong + report.outside.length + report.kept.length === 0)
      output.out('All results are as stored and in range.');
    return wrong > 0 ? 1 : 0;
  },
};

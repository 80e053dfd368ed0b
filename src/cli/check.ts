import type { ChangedResult } from '../workbook/check';
import { cellText } from './cellText';
import type { Command } from './command';
import { LIMITS } from './limits';
import { table } from './table';
import { openWorkbook } from './workbookFile';

/** Heading of what a workbook of an earlier basis held otherwise. */
export const SINCE_BASIS = 'Results that are others since a function answers otherwise';

export const check: Command = {
  usage: ['IN.xlsx'],
  summary: 'Say what a person should know of a workbook before it is saved anew.',
  details: [
    'Lists the cells whose results differ from those stored, with the reason where a function answers otherwise since the workbook was saved, MOLD functions that do not exist, inputs that are needed and blank, numbers that look like the other system of units, results in error, values outside an equation’s range, cautions, and formulas that are not calculated here, with the reason.',
    'Nothing is written.',
    'The exit status is 1 if a result differs, a function is unknown or a number looks like the other system, 2 if the workbook cannot be read.',
  ],
  options: {},
  takes: [1, 1],
  async run({ positionals: [input = ''] }, output) {
    const workbook = await openWorkbook(input);
    const [{ checkWorkbook }, { precisionWarning }, { worksheetFunctions }, { BASIS_TEXT }] =
      await Promise.all([
        import('../workbook/check'),
        import('../workbook/precision'),
        import('../call/functions'),
        import('../call/version'),
      ]);
    const warning = precisionWarning(workbook);
    if (warning !== undefined) output.out(`${warning}\n`);
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
    const differing = (title: string, found: readonly ChangedResult[], last: string): void => {
      if (found.length === 0) return;
      output.out(`\n${title}\n`);
      output.out(
        table(
          ['Cell', 'Stored', 'Now', last],
          found.map(({ sheet, cell, before, now, formula, because }) => [
            `${sheet}!${cell}`,
            cellText(before),
            cellText(now),
            because.length > 0 ? because.join(' ') : `=${formula}`,
          ]),
        ),
      );
    };
    const isOfBasis = ({ because }: ChangedResult): boolean => because.length > 0;
    differing(SINCE_BASIS, report.changed.filter(isOfBasis), 'Why');
    differing(
      'Results that differ from those stored',
      report.changed.filter((one) => !isOfBasis(one)),
      'Formula',
    );
    section('Unknown functions', report.unknown);
    section('Inputs that are needed and blank', report.blank);
    section('Numbers that look like the other system of units', report.otherUnits);
    section('Results in error', report.errors);
    section('Outside the range of the equation', report.outside);
    section('Cautions', report.cautions);
    section('Not calculated here: the stored value stands', report.kept);
    const wrong = report.changed.length + report.unknown.length + report.otherUnits.length;
    if (wrong + report.outside.length + report.blank.length + report.kept.length + report.errors.length === 0)
      output.out('All results are as stored and in range.');
    return wrong > 0 ? 1 : 0;
  },
};

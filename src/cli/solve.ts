import { numberText, withUnit } from '../core/format';
import { readBracket } from '../whatif/values';
import { cellText, readCells } from '../whatif/plan';
import { solveSheet } from '../whatif/solve';
import type { Heading } from '../whatif/heading';
import type { Command } from './command';
import { telling } from './telling';
import { Failure } from './command';
import { CELLS_HELP, onCopy, OVER_FORMULAS, readSetting } from './whatifCells';

export const solve: Command = {
  usage: ['FILE.xlsx --set CELL=FROM..TO --read CELL --target NUMBER'],
  summary: 'Find the value of one cell of a workbook at which another one shows a target.',
  details: [
    CELLS_HELP,
    'The target must lie between what the two ends give; if it does not, the refusal says what they give.',
    'Everything is tried on a copy: the workbook is left as it is. The exit status is 2 if there is no solution.',
  ],
  options: {
    set: {
      type: 'string',
      value: 'CELL=FROM..TO',
      says: 'The cell to find a value for, and the ends between.',
    },
    read: { type: 'string', value: 'CELL', says: 'The cell that is to come out at the target.' },
    target: { type: 'string', value: 'NUMBER', says: 'The target, in the unit of the cell.' },
    'over-formulas': OVER_FORMULAS,
    json: {
      type: 'boolean',
      says: 'Print {"cell":…,"value":…,"unit":…,"result":…,"runs":…,"stretch":…} with all digits.',
    },
  },
  takes: [1, 1],
  async run(args, output) {
    const [input = ''] = args.positionals;
    const [set, read, target] = [args.text('set'), args.text('read'), args.text('target')];
    if (set === undefined) throw new Failure('Name the cell to find a value for: --set Insert!C6=1..20.');
    if (read === undefined)
      throw new Failure('Name the cell that is to come out at the target: --read Insert!C24.');
    if (target === undefined || target.trim() === '' || !Number.isFinite(Number(target))) {
      throw new Failure('Give the target as a number: --target 0.');
    }
    const solution = await onCopy(input, (copy, sheet, named) => {
      const [vary, ends] = readSetting(set, sheet, named);
      const [result, ...more] = readCells(read, sheet, named);
      if (!result || more.length > 0) throw new Failure('Name one cell with --read.');
      const overFormulas = args.flag('over-formulas');
      const wish = { vary, ...readBracket(ends), result, target: Number(target), overFormulas };
      return solveSheet(copy, wish, { onProgress: telling(output, 'calculations') });
    });
    output.progress?.('');
    if (!solution) return 2;
    const { input: found, value, result, met, runs, atEnd, stretch } = solution;
    output.out(
      args.flag('json')
        ? JSON.stringify({ cell: cellText(found.cell), value, unit: found.unit, result: met, runs, stretch })
        : [
            line(found, value),
            line(result, met),
            ...(atEnd ? ['That is an end of the range: nearer values may meet the target as well.'] : []),
            ...(stretch ? ['The target holds beside it too, on a stretch: this is one value of many.'] : []),
            `Found in ${runs} calculations of the workbook.`,
          ].join('\n'),
    );
    return 0;
  },
};

const line = ({ label, unit, cell }: Heading, value: number): string =>
  `${label} (${cellText(cell)}): ${withUnit(numberText(value), unit)}`;

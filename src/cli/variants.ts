import type { CellChange } from '../package/changes';
import type { Workbook } from '../package/model';
import { Refusal } from '../core/refusal';
import { readCells } from '../whatif/plan';
import type * as VariantsSheet from '../whatif/variants/read';
import type { Command } from './command';
import { Failure } from './command';
import { LIMITS } from './limits';
import { table } from './table';
import { calculated, CELLS_HELP, namedIn } from './whatifCells';
import { openWorkbook, writeWorkbook } from './workbookFile';

export const variants: Command = {
  usage: ['FILE.xlsx [--inputs CELL,… --results CELL,…] [--add NAME] [--apply NAME] [-o OUT.xlsx]'],
  summary: 'Keep named sets of inputs side by side on the sheet "Variants" of a workbook.',
  details: [
    CELLS_HELP,
    'Without options it shows the variants with their results. --inputs and --results begin the sheet; --add keeps the present values of the inputs under a name; --apply puts those of a variant into the design. Results of all variants are worked out each time.',
    'The exit status is 2 if the work cannot be done; then nothing is written.',
  ],
  options: {
    inputs: { type: 'string', value: 'CELL,…', says: 'The cells that differ from variant to variant.' },
    results: { type: 'string', value: 'CELL,…', says: 'The cells to compare: results and verdicts.' },
    add: { type: 'string', value: 'NAME', says: 'Keep the present values under this name.' },
    apply: { type: 'string', value: 'NAME', says: 'Put the values of this variant into the design.' },
    output: { type: 'string', short: 'o', value: 'OUT.xlsx', says: 'The workbook to write.' },
  },
  takes: [1, 1],
  async run(args, output) {
    const [input = ''] = args.positionals;
    const target = args.text('output');
    const [{ changed }, library, sheet, { worksheetFunctions: functions }] = await Promise.all([
      import('../whatif/kept'),
      import('../whatif/variants'),
      import('../whatif/variants/read'),
      import('../call/functions'),
    ]);
    let workbook = await calculated(await openWorkbook(input));
    const old =
      sheet.readVariants(workbook)?.variants.filter(({ standing }) => standing === sheet.AGAIN) ?? [];
    const put = async (changes: readonly CellChange[]): Promise<Workbook> =>
      calculated(changed(workbook, functions, changes));
    const [inputs, results, add, apply] = ['inputs', 'results', 'add', 'apply'].map((one) => args.text(one));
    if (target === undefined && [inputs, results, add, apply].some((one) => one !== undefined))
      throw new Failure('Name the workbook to write: -o OUT.xlsx.');
    try {
      if (inputs !== undefined || results !== undefined) {
        const front = workbook.sheets[workbook.activeSheet]?.name ?? '';
        workbook = await calculated(
          await library.beginVariants(
            workbook,
            functions,
            inputs === undefined ? [] : readCells(inputs, front, namedIn(workbook)),
            results === undefined ? [] : readCells(results, front, namedIn(workbook)),
          ),
        );
      }
      if (add !== undefined) workbook = await put(library.presentChanges(workbook, functions, add));
      if (apply !== undefined) workbook = await put(await library.applyChanges(workbook, functions, apply));
      workbook = await put(await library.resultChanges(workbook, functions, LIMITS));
    } catch (error) {
      if (error instanceof Refusal) throw new Failure(error.message);
      throw error;
    }
    output.out(shown(workbook, sheet));
    if (old.length > 0)
      output.out(
        `The file had results made for other values (${old.map(({ name }) => name).join(', ')}); these are worked out anew.`,
      );
    if (target === undefined) return 0;
    await writeWorkbook(target, workbook, []);
    output.out(`Written to ${target}.`);
    return 0;
  },
};

/** The sheet's own lines, from the names of the variants to the last result. */
function shown(
  workbook: Workbook,
  { readVariants, isSheet, inputRow, resultRow, NAMES, NOW }: typeof VariantsSheet,
): string {
  const found = readVariants(workbook);
  const cells = workbook.sheets.find(isSheet)?.cells ?? [];
  if (!found) return '';
  const line = (row: number): (string | number)[] =>
    Array.from({ length: NOW + 1 + found.variants.length }, (_, column) => {
      const value = cells.find((one) => one.row === row && one.column === column)?.value ?? '';
      return typeof value === 'number' ? Number(value.toPrecision(6)) : String(value);
    });
  const { length: inputs } = found.inputs;
  const rows = [
    ...found.inputs.map((_, at) => inputRow(at)),
    ...found.results.map((_, at) => resultRow(inputs, at)),
  ];
  return table(line(NAMES).map(String), rows.map(line));
}

import { readFileSync } from 'node:fs';
import { CellError } from '../cells/value';
import type { Matrix } from '../cells/value';
import { cellJson, cellText } from './cellText';
import type { Command, Output } from './command';
import { Failure } from './command';
import { readBytes } from './files';
import { functionsNamedBy } from './functionsNamedBy';
import { LIMITS } from './limits';

export const calc: Command = {
  usage: ["'=FORMULA' [--json]", '--file FILE'],
  summary: 'Work out formulas and print their values.',
  details: [
    'Takes whatever a worksheet cell takes: nested functions, array constants, native functions.',
    'Prints rows by line and cells by tab. The exit status is 1 if the formula gives an error.',
    'Quote the formula, so that the shell leaves it alone: moldsheet calc \'=MOLD.TAP.DRILL("10-32")\'',
  ],
  options: {
    json: { type: 'boolean', says: 'Print {"formula":…,"value":…} or {"formula":…,"error":…,"message":…}.' },
    file: {
      type: 'string',
      value: 'FILE',
      says: 'Read one formula a line (- is standard input) and print one line of JSON for each, in order.',
    },
  },
  takes: [0, 1],
  async run(args, output) {
    const file = args.text('file');
    const [formula] = args.positionals;
    if ((file === undefined) === (formula === undefined)) {
      throw new Failure('calc takes one formula, or --file with a file of formulas.');
    }
    if (file !== undefined) {
      await eachLine(await formulasOf(file), output);
      return 0;
    }
    const [values = []] = await calculate([formula ?? '']);
    if (args.flag('json')) output.out(line(formula ?? '', values));
    else print(values, output);
    return values.flat().some((value) => value instanceof CellError) ? 1 : 0;
  },
};

/** Loaded only when there is something to work out. */
async function calculate(formulas: readonly string[]): Promise<Matrix[]> {
  const { calculateFormulas } = await import('../workbook/calculateFormulas');
  const few = await functionsNamedBy(formulas);
  if (few) {
    const values = await calculateFormulas(formulas, few, LIMITS);
    // What is said of an unknown name rests on all that there are.
    if (!values.flat(2).some((value) => value instanceof CellError && value.code === '#NAME?')) return values;
  }
  const { worksheetFunctions } = await import('../call/functions');
  return calculateFormulas(formulas, worksheetFunctions, LIMITS);
}

async function formulasOf(file: string): Promise<string[]> {
  const text = new TextDecoder().decode(
    file === '-' ? readFileSync(process.stdin.fd) : await readBytes(file),
  );
  return text.split(/\r?\n/).filter((one) => one.trim() !== '');
}

async function eachLine(formulas: readonly string[], output: Output): Promise<void> {
  const results = await calculate(formulas);
  formulas.forEach((formula, index) => {
    output.out(line(formula, results[index] ?? []));
  });
}

function line(formula: string, values: Matrix): string {
  const single = values.length === 1 && values[0]?.length === 1 ? values[0][0] : undefined;
  if (single instanceof CellError) return JSON.stringify({ formula, ...(cellJson(single) as object) });
  const value = single === undefined ? values.map((row) => row.map(cellJson)) : single;
  return JSON.stringify({ formula, value });
}

function print(values: Matrix, output: Output): void {
  output.out(values.map((row) => row.map(cellText).join('\t')).join('\n'));
  const said = values
    .flat()
    .flatMap((value) => (value instanceof CellError && value.message ? [value.message] : []));
  for (const message of new Set(said)) output.err(message);
}

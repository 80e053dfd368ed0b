/**
 * Runs rows of check values, which stand outside of the project, through the functions as a worksheet calls them,
 * with the units of every call early and in their place: `tsx scripts/checkRows/index.mts checks.json [--basis2]`.
 * Rows that speak of basis 2 are reported apart and fail the run only with `--basis2`.
 */
import { readFileSync } from 'node:fs';
import { worksheetFunctions } from '../../src/call/functions';
import { calculateFormulas } from '../../src/workbook/calculateFormulas';
import { disagreement, type CheckRow } from '../../tests/support/checkRows';
import { respelled, SPELLINGS } from './spellings';

const BASIS_2 = 'basis 2';

const [file, ...flags] = process.argv.slice(2);
if (file === undefined) throw new Error('Name the file of rows.');
const rows = JSON.parse(readFileSync(file, 'utf8')) as readonly CheckRow[];
const functions = new Map(worksheetFunctions.map((fn) => [fn.id, fn]));

const formulas = rows.flatMap(({ formula }) => [
  formula,
  ...SPELLINGS.map((spelling) => respelled(formula, spelling, functions)),
]);
const distinct = [...new Set(formulas)];
const answers = new Map(
  (await calculateFormulas(distinct, worksheetFunctions)).map((answer, i) => [distinct[i], answer]),
);

/** The spellings in which a row does not hold, with what they give. */
function failures(row: CheckRow): string[] {
  const spelled = new Set([row.formula, ...SPELLINGS.map((one) => respelled(row.formula, one, functions))]);
  return [...spelled].flatMap((formula) => {
    const wrong = disagreement(row, answers.get(formula) ?? []);
    return wrong === undefined ? [] : [`${formula}\n    gives ${wrong}\n    (${row.source})`];
  });
}

function report(title: string, some: readonly CheckRow[]): number {
  const failed = some.map(failures).filter((wrong) => wrong.length > 0);
  for (const line of failed.flat()) console.log(`  ${line}`);
  console.log(`${title}: ${some.length - failed.length} rows hold, ${failed.length} do not.`);
  return failed.length;
}

console.log(`Check values in ${SPELLINGS.length} spellings of the units (${distinct.length} formulas)`);
const speaksOfBasis2 = (row: CheckRow): boolean =>
  Object.values(row).some((text) => String(text).includes(BASIS_2));
const newer = rows.filter(speaksOfBasis2);
const older = rows.filter((row) => !speaksOfBasis2(row));
const newerFailed = report('Basis 2', newer);
const olderFailed = report('All others', older);
process.exitCode = olderFailed > 0 || (flags.includes('--basis2') && newerFailed > 0) ? 1 : 0;

/** What-ifs written into workbooks, and run again there. */
import { CellError } from '../cells/value';
import type { Workbook } from '../package/model';
import type { Outcome } from '../whatif/run';
import { Failure, type Output } from './command';
import { telling } from './telling';
import { calculated } from './whatifCells';
import { openWorkbook, writeWorkbook } from './workbookFile';

async function library() {
  const [kept, { worksheetFunctions }] = await Promise.all([
    import('../whatif/kept'),
    import('../call/functions'),
  ]);
  return { ...kept, functions: worksheetFunctions };
}

export async function keep(input: string, target: string, outcome: Outcome): Promise<void> {
  const { keepWhatIf, functions } = await library();
  const workbook = await calculated(await openWorkbook(input));
  const { workbook: kept } = await keepWhatIf(workbook, functions, outcome);
  await writeWorkbook(target, await calculated(kept), []);
}

/** Gives the exit status: 1 where a result is in error. */
export async function again(input: string, target: string, output: Output): Promise<number> {
  const { keptWhatIfs, runAgain, changed, functions } = await library();
  let workbook: Workbook = await calculated(await openWorkbook(input));
  const all = keptWhatIfs(workbook);
  if (all.length === 0)
    throw new Failure(`${input} holds no what-if. One is written with --set, --read and -o OUT.xlsx.`);
  let failed = false;
  for (const one of all) {
    const done = await runAgain(workbook, functions, one, { onProgress: telling(output, 'variations') });
    if (!done) continue;
    workbook = await calculated(changed(workbook, functions, done.changes));
    const { rows } = done.outcome;
    failed ||= rows.some(({ results }) => results.some((value) => value instanceof CellError));
    output.out(`${one.made.sheet}: ${rows.length} variations run again.`);
  }
  await writeWorkbook(target, workbook, []);
  output.out(`Written to ${target}.`);
  return failed ? 1 : 0;
}

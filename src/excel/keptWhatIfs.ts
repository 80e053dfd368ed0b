/// <reference types="office-js" />
import { worksheetFunctions } from '../call/functions';
import type { Host, KeptHost, KeptState } from '../panel/host';
import { Refusal } from '../core/refusal';
import { CHANGED, keptWhatIfs, type KeptWhatIf } from '../whatif/kept/record';
import type { Outcome, RunOptions } from '../whatif/run';
import { namesAndSheets } from './namesAndSheets';

/** What-ifs that stay in Excel's workbook. What writes and runs them is loaded when it is wanted. */
export class ExcelKept implements KeptHost {
  constructor(private readonly host: Host) {}

  /** Each says itself, in the last column of what it was made for, whether anything has changed since. */
  list(): Promise<readonly KeptState[]> {
    return Excel.run(async (context) => {
      const all = keptWhatIfs(await namesAndSheets(context));
      const marks = all.map(({ made: { sheet, area } }) =>
        context.workbook.worksheets
          .getItem(sheet)
          .getRangeByIndexes(area.top, area.right, area.bottom - area.top + 1, 1),
      );
      for (const range of marks) range.load('values');
      if (marks.length > 0) await context.sync();
      return all.map((kept, at) => ({ kept, isOld: (marks[at]?.values ?? []).flat().includes(CHANGED) }));
    });
  }

  async keep(outcome: Outcome): Promise<string> {
    const [{ planKept }, { writeSheets }, { readOpenWorkbook }] = await Promise.all([
      import('../whatif/kept'),
      import('./writeSheets'),
      import('./files'),
    ]);
    const { description, charts, record } = await planKept(
      await readOpenWorkbook(),
      worksheetFunctions,
      outcome,
    );
    await writeSheets({ description, charts, inFront: true });
    return record.made.sheet;
  }

  async again(kept: KeptWhatIf, options: RunOptions): Promise<Outcome | undefined> {
    const [{ runAgain }, { writeAgain }, { trialIn }] = await Promise.all([
      import('../whatif/kept'),
      import('./writeAgain'),
      import('./trial'),
    ]);
    const { workbook, there } = await trialIn(this.host, kept.vary, kept.read);
    const found = await runAgain(
      workbook,
      worksheetFunctions,
      kept,
      { ...options, ...(there && { journal: there.journal }) },
      there?.cells,
    );
    if (!found) return undefined;
    // The run took its time: the sheet may be another one by now.
    const now = await Excel.run(namesAndSheets);
    if (!keptWhatIfs(now).some((one) => JSON.stringify(one) === JSON.stringify(kept)))
      throw new Refusal('The workbook was changed during the run. Run it again.');
    await writeAgain(kept, found);
    return found.outcome;
  }
}

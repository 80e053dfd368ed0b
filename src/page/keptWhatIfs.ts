/** What-ifs of the workbook on the desk that stay in it. */
import type { WorksheetFunction } from '../call/worksheetFunction';
import { Refusal } from '../core/refusal';
import type { KeptHost, KeptState } from '../panel/host';
import type { Workbook } from '../package/model';
import { CHANGED, keptWhatIfs, type KeptWhatIf } from '../whatif/kept/record';
import type { Outcome, RunOptions } from '../whatif/run';
import type { Grid } from './grid';

/** As much of the session as is needed here. */
export interface Desk {
  /** The workbook as it stands. */
  present(): Promise<Workbook>;
  /** Shows another form of it as one act that can be taken back. */
  rework(change: (workbook: Workbook) => Promise<Workbook>): Promise<void>;
}

export class KeptWhatIfs implements KeptHost {
  constructor(
    private readonly grid: Grid,
    private readonly functions: readonly WorksheetFunction[],
    private readonly desk: Desk,
  ) {}

  list(): Promise<readonly KeptState[]> {
    return Promise.resolve(keptWhatIfs(this.grid.file).map((kept) => ({ kept, isOld: this.isOld(kept) })));
  }

  async keep(outcome: Outcome): Promise<string> {
    // What writes and runs them is loaded when it is wanted.
    const { keepWhatIf } = await import('../whatif/kept');
    let name = '';
    await this.desk.rework(async (before) => {
      const { workbook, sheet } = await keepWhatIf(before, this.functions, outcome);
      name = sheet;
      return workbook;
    });
    this.grid.select(name, 0, 0);
    return name;
  }

  async again(kept: KeptWhatIf, options: RunOptions): Promise<Outcome | undefined> {
    const { changed, runAgain } = await import('../whatif/kept');
    const found = await runAgain(await this.desk.present(), this.functions, kept, options);
    if (!found) return undefined;
    await this.desk.rework((now) => {
      // The run took its time: the sheet may be another one by now.
      const same = keptWhatIfs(now).some((one) => JSON.stringify(one) === JSON.stringify(kept));
      if (!same) throw new Refusal('The workbook was changed during the run. Run it again.');
      return Promise.resolve(changed(now, this.functions, found.changes));
    });
    return found.outcome;
  }

  private isOld({ made: { sheet, area } }: KeptWhatIf): boolean {
    const cells = this.grid.cells(sheet);
    return Array.from(
      { length: area.bottom - area.top + 1 },
      (_, down) => cells.read(area.top + down, area.right).value,
    ).includes(CHANGED);
  }
}

/** The variants of the workbook on the desk. */
import type { WorksheetFunction } from '../call/worksheetFunction';
import type { VariantsHost } from '../panel/host';
import type { CellChange } from '../package/changes';
import type { Workbook } from '../package/model';
import type { CellRef } from '../whatif/plan';
import { isSheet, readVariants, type Variants } from '../whatif/variants/read';
import type { Grid } from './grid';
import type { Desk } from './keptWhatIfs';

export class PageVariants implements VariantsHost {
  constructor(
    private readonly grid: Grid,
    private readonly functions: readonly WorksheetFunction[],
    private readonly desk: Desk,
  ) {}

  /** As the grid has it: names and values of variants may be typed over. */
  read(): Promise<Variants | undefined> {
    const { file } = this.grid;
    const sheet = file.sheets.find(isSheet);
    if (!sheet) return Promise.resolve(undefined);
    const cells = this.grid.cells(sheet.name);
    return Promise.resolve(readVariants(file, (row, column) => cells.read(row, column).value));
  }

  async begin(inputs: readonly CellRef[], results: readonly CellRef[]): Promise<void> {
    const { beginVariants } = await import('../whatif/variants');
    await this.desk.rework((now) => beginVariants(now, this.functions, inputs, results));
  }

  async add(name: string): Promise<void> {
    const { presentChanges, resultChanges } = await import('../whatif/variants');
    await this.desk.rework(async (now) => {
      const added = await this.changed(now, presentChanges(now, this.functions, name));
      return this.changed(added, await resultChanges(added, this.functions));
    });
  }

  async apply(name: string): Promise<string> {
    const { applyChanges } = await import('../whatif/variants');
    await this.desk.rework(async (now) => this.changed(now, await applyChanges(now, this.functions, name)));
    return 'Undo takes it back.';
  }

  async again(): Promise<void> {
    const { resultChanges } = await import('../whatif/variants');
    await this.desk.rework(async (now) => this.changed(now, await resultChanges(now, this.functions)));
  }

  private async changed(workbook: Workbook, changes: readonly CellChange[]): Promise<Workbook> {
    const { changed } = await import('../whatif/kept');
    return changed(workbook, this.functions, changes);
  }
}

import type { WorksheetFunction } from '../call/worksheetFunction';
import { areaAddress } from '../cells/address';
import type {
  CellInput,
  CellTrace,
  CellView,
  FormInputs,
  FormOutcome,
  Host,
  Place,
  Range,
  WorkbookTrial,
} from '../panel/host';
import { WorkbookCopy } from '../whatif/copy';
import { editCell } from './editCell';
import type { Grid } from './grid';
import { KeptWhatIfs, type Desk } from './keptWhatIfs';
import { PageVariants } from './variants';

/** The page's grid, as the panel sees it. */
export class GridHost implements Host {
  readonly kept: KeptWhatIfs;
  readonly variants: PageVariants;
  /** What the last look at all formulas found; a selection that moves changes none of them. */
  private looked:
    | {
        readonly unit: string;
        readonly isSuch: (formula: string) => boolean;
        readonly found: readonly Range[];
      }
    | undefined;

  constructor(
    private readonly grid: Grid,
    private readonly functions: readonly WorksheetFunction[],
    private readonly sheets: Desk,
  ) {
    this.kept = new KeptWhatIfs(grid, functions, sheets);
    this.variants = new PageVariants(grid, functions, sheets);
    grid.onEdit(() => {
      this.looked = undefined;
    });
  }

  /** Forms are for the few: what writes them is loaded with the first. */
  async writeForm(fn: WorksheetFunction, at?: Place, inputs?: FormInputs): Promise<FormOutcome> {
    const [{ writeFormHere }, { writeForm }] = await Promise.all([
      import('../panel/formHere'),
      import('../forms/write'),
    ]);
    return writeFormHere(
      this,
      fn,
      { at, inputs },
      {
        read: () => this.sheets.present(),
        write: async (plan) => {
          await this.sheets.rework((workbook) => writeForm(workbook, plan, this.functions));
          return `Written at ${areaAddress(plan.area)} of ${plan.sheet}. Undo takes all of it back.`;
        },
      },
    );
  }

  readSelection(): Promise<Range | undefined> {
    const workbook = this.grid.api.getActiveWorkbook();
    const range = workbook?.getActiveRange();
    // While one workbook takes the place of another, the selection is still that of the old one.
    if (!workbook || !range || workbook.getId() !== this.grid.unitId) return Promise.resolve(undefined);
    return Promise.resolve({
      sheet: workbook.getActiveSheet().getSheetName(),
      row: range.getRow(),
      column: range.getColumn(),
      rows: range.getHeight(),
      columns: range.getWidth(),
    });
  }

  trace({ sheet, row, column }: Range): Promise<CellTrace> {
    return Promise.resolve(this.grid.trace(sheet, row, column));
  }

  formulasWhere(isSuch: (formula: string) => boolean): readonly Range[] {
    const unit = this.grid.unitId;
    if (this.looked?.unit !== unit || this.looked.isSuch !== isSuch)
      this.looked = { unit, isSuch, found: this.look(isSuch) };
    return this.looked.found;
  }

  private look(isSuch: (formula: string) => boolean): readonly Range[] {
    return this.grid.workbook.getSheets().flatMap((one) => {
      const sheet = one.getSheetName();
      const cells = this.grid.cells(sheet);
      return cells.formulaPlaces().flatMap(({ row, column }) => {
        const { formula } = cells.typed(row, column);
        return formula !== undefined && isSuch(formula) ? [{ sheet, row, column, rows: 1, columns: 1 }] : [];
      });
    });
  }

  select({ sheet, row, column }: Range): void {
    this.grid.select(sheet, row, column);
  }

  onSelectionChange(listener: () => void): () => void {
    return this.grid.onLook(listener);
  }

  read({ sheet, row, column, rows, columns }: Range): Promise<CellView[][]> {
    const cells = this.grid.cells(sheet);
    return Promise.resolve(
      Array.from({ length: rows }, (_, down) =>
        Array.from({ length: columns }, (__, across) => {
          const { value, formula, spilled } = cells.read(row + down, column + across);
          const kept = cells.keptReason(row + down, column + across);
          return {
            value,
            formula: formula === undefined ? '' : `=${formula}`,
            ...(spilled && { spilled }),
            ...(kept !== undefined && { kept }),
          };
        }),
      ),
    );
  }

  write({ sheet, row, column }: Range, cells: readonly (readonly CellInput[])[]): Promise<void> {
    const width = Math.max(...cells.map((line) => line.length));
    const values = cells.map((line) =>
      Array.from({ length: width }, (_, across) => {
        const input = line[across] ?? null;
        if (typeof input === 'string' && input.startsWith('=')) return { f: input, v: null };
        return { v: input, f: null, si: null, p: null };
      }),
    );
    this.grid.sheet(sheet).getRange(row, column, cells.length, width).setValues(values);
    return Promise.resolve();
  }

  recalculate(): Promise<void> {
    return this.grid.calculated();
  }

  insertFormula(text: string): Promise<void> {
    editCell(this.grid, text);
    return Promise.resolve();
  }

  /** What is tried never comes near the grid, so that neither a closed tab nor undo can meet with it. */
  async copy(): Promise<WorkbookTrial> {
    return new WorkbookCopy(await this.sheets.present(), this.functions);
  }
}

/// <reference types="office-js" />
import { worksheetFunctions } from '../call/functions';
import type { CellChange } from '../package/changes';
import type { Cell, Workbook } from '../package/model';
import type { Host, VariantsHost } from '../panel/host';
import type { CellRef } from '../whatif/plan';
import { heldText, type Held } from '../whatif/run';
import { isSheet, readVariants, type Variants } from '../whatif/variants/read';
import { cellValue } from './cellValue';
import { namesAndSheets } from './namesAndSheets';
import { canUndo } from './undoStep';

/** Variants in Excel's workbook: plain cells of a sheet. What plans and works them out is loaded when it is wanted. */
export class ExcelVariants implements VariantsHost {
  constructor(private readonly host: Host) {}

  read(): Promise<Variants | undefined> {
    return Excel.run(async (context) => {
      const { names, sheets } = await namesAndSheets(context);
      const there = sheets.find(isSheet);
      if (!there) return undefined;
      const range = context.workbook.worksheets.getItem(there.name).getUsedRangeOrNullObject(true);
      range.load('values,valueTypes,rowIndex,columnIndex');
      await context.sync();
      const cells = range.isNullObject ? [] : cellsOf(range);
      return readVariants({ names, sheets: [{ name: there.name, cells }] });
    });
  }

  async begin(inputs: readonly CellRef[], results: readonly CellRef[]): Promise<void> {
    const [{ planVariants }, { writeSheets }, workbook] = await Promise.all([
      import('../whatif/variants'),
      import('./writeSheets'),
      present(),
    ]);
    const description = await planVariants(workbook, worksheetFunctions, inputs, results);
    await writeSheets({ description, inFront: false });
  }

  async add(name: string): Promise<void> {
    const { presentChanges } = await import('../whatif/variants');
    await this.workOut((workbook) => presentChanges(workbook, worksheetFunctions, name));
  }

  async apply(name: string): Promise<string> {
    const [{ applyChanges }, { writeChanges }, workbook] = await Promise.all([
      import('../whatif/variants'),
      import('./writeAgain'),
      present(),
    ]);
    const changes = await applyChanges(workbook, worksheetFunctions, name);
    const held: Held[] = [];
    for (const { sheet, row, column } of changes) {
      const [[view] = []] = await this.host.read({ sheet, row, column, rows: 1, columns: 1 });
      const content = view?.formula || ((view?.value ?? null) as Held['content']);
      held.push({ cell: { sheet, row, column }, content });
    }
    await writeChanges(changes);
    return canUndo()
      ? 'One step of undo takes it back.'
      : `This Excel cannot undo what an add-in writes. Before, ${heldText(held)}.`;
  }

  async again(): Promise<void> {
    await this.workOut(() => []);
  }

  /** Changes the sheet of variants, then works the results of all of them out. */
  private async workOut(change: (workbook: Workbook) => readonly CellChange[]): Promise<void> {
    const [{ resultChanges }, { changed }, { writeChanges }, { trialIn }, found] = await Promise.all([
      import('../whatif/variants'),
      import('../whatif/kept'),
      import('./writeAgain'),
      import('./trial'),
      this.read(),
    ]);
    const { workbook, there } = await trialIn(this.host, found?.inputs ?? [], found?.results ?? []);
    const before = change(workbook);
    const named = changed(workbook, worksheetFunctions, before);
    const results = await resultChanges(named, worksheetFunctions, undefined, there);
    await writeChanges([...before, ...results]);
  }
}

const present = async (): Promise<Workbook> => (await import('./files')).readOpenWorkbook();

const cellsOf = ({ values, valueTypes, rowIndex, columnIndex }: Excel.Range): Cell[] =>
  values.flatMap((line: unknown[], down) =>
    line.map((value, across) => ({
      row: rowIndex + down,
      column: columnIndex + across,
      value: cellValue(value, valueTypes[down]?.[across]),
      style: 0,
    })),
  );

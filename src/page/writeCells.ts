/** Many cells written at once, with one step to undo. The grid's own command for it measures every row: minutes. */
import { ICommandService, IUndoRedoService } from '@univerjs/core';
import type { ICellData, Injector, Nullable, Worksheet } from '@univerjs/core';
import {
  SetRangeValuesMutation,
  SetRangeValuesUndoMutationFactory,
  SetWorksheetColumnCountMutation,
  SetWorksheetRowCountMutation,
  type ISetRangeValuesMutationParams,
} from '@univerjs/preset-sheets-core';

/** The new content of a cell, whole; a look that is not named stays. */
export type WrittenCell = Omit<ICellData, 's'> & { readonly s?: Nullable<ICellData['s']> };
export type WrittenCells = Record<number, Record<number, WrittenCell>>;

export interface WrittenSheet {
  readonly sheet: Worksheet;
  readonly cells: WrittenCells;
}

export function writeCells(injector: Injector, unitId: string, sheets: readonly WrittenSheet[]): void {
  const commands = injector.get(ICommandService);
  const steps = sheets.map(({ sheet, cells }) => {
    const at = { unitId, subUnitId: sheet.getSheetId() };
    const rows = Object.keys(cells).map(Number);
    const columns = Object.values(cells).flatMap((line) => Object.keys(line).map(Number));
    const rowCount = rows.reduce((most, row) => Math.max(most, row + 1), 0);
    const columnCount = columns.reduce((most, column) => Math.max(most, column + 1), 0);
    if (rowCount > sheet.getRowCount())
      commands.syncExecuteCommand(SetWorksheetRowCountMutation.id, { ...at, rowCount });
    if (columnCount > sheet.getColumnCount())
      commands.syncExecuteCommand(SetWorksheetColumnCountMutation.id, { ...at, columnCount });
    const redo: ISetRangeValuesMutationParams = { ...at, cellValue: cells };
    return { redo, undo: SetRangeValuesUndoMutationFactory(injector, redo) };
  });
  for (const { redo } of steps) commands.syncExecuteCommand(SetRangeValuesMutation.id, redo);
  const mutation = (params: ISetRangeValuesMutationParams) => ({ id: SetRangeValuesMutation.id, params });
  injector.get(IUndoRedoService).pushUndoRedo({
    unitID: unitId,
    undoMutations: steps.map(({ undo }) => mutation(undo)),
    redoMutations: steps.map(({ redo }) => mutation(redo)),
  });
}

import {
  DOCS_FORMULA_BAR_EDITOR_UNIT_ID_KEY,
  DOCS_NORMAL_EDITOR_UNIT_ID_KEY,
  ICommandService,
} from '@univerjs/core';
import {
  DeviceInputEventType,
  IEditorService,
  SetCellEditVisibleOperation,
} from '@univerjs/preset-sheets-core';
import type { Grid } from './grid';

/** Starts editing the selected cell with this text, the cursor at its end. */
export function editCell(grid: Grid, text: string): void {
  const commands = grid.injector.get(ICommandService);
  const editors = grid.injector.get(IEditorService);
  commands.syncExecuteCommand(SetCellEditVisibleOperation.id, {
    visible: true,
    unitId: grid.unitId,
    eventType: DeviceInputEventType.Dblclick,
  });
  editors.getEditor(DOCS_NORMAL_EDITOR_UNIT_ID_KEY)?.replaceText(text);
  editors.getEditor(DOCS_FORMULA_BAR_EDITOR_UNIT_ID_KEY)?.replaceText(text, false);
}

/** Lists of choices at a cell: ours in the place of the grid's, which knows the mouse alone; Alt+Down opens it. */
import { ICommandService, type Injector } from '@univerjs/core';
import {
  ComponentManager,
  IEditorBridgeService,
  ISheetCellDropdownManagerService,
} from '@univerjs/preset-sheets-core';
import { CellList } from './CellList';
import { waitForList, waitsForList } from './cellListKeys';
import type { GridPlace } from './entryGuard';

/** The grid's names for its list, and for what opens one. */
const LIST = 'sheets.dropdown.list';
const OPEN = 'sheet.operation.show-data-validation-dropdown';

export function openLists(
  injector: Injector,
  grid: HTMLElement,
  desk: {
    /** The selected cell, if it has a list. */
    readonly listCell: () => GridPlace | undefined;
    readonly focus: () => void;
  },
): void {
  const lists = injector.get(ISheetCellDropdownManagerService);
  const components = injector.get(ComponentManager);
  components.delete(LIST);
  components.register(LIST, CellList);
  const editor = injector.get(IEditorBridgeService);
  const show = lists.showDropdown.bind(lists);
  lists.showDropdown = (list) => {
    // One that opens while somebody types would take the keys to itself.
    if (editor.isVisible().visible) return { dispose: () => undefined };
    const { onHide } = list;
    return show({
      ...list,
      onHide: () => {
        onHide?.();
        if (list.type === 'list') desk.focus();
      },
    });
  };
  window.addEventListener(
    'keydown',
    (event) => {
      if (waitsForList(event)) {
        event.preventDefault();
        event.stopImmediatePropagation();
        return;
      }
      const isMeant = event.altKey && event.key === 'ArrowDown' && grid.contains(event.target as Node | null);
      if (!isMeant || editor.isVisible().visible) return;
      const cell = desk.listCell();
      if (!cell) return;
      event.preventDefault();
      event.stopImmediatePropagation();
      waitForList();
      const { unitId, subUnitId, row, col: column } = cell;
      injector.get(ICommandService).syncExecuteCommand(OPEN, { unitId, subUnitId, row, column });
    },
    true,
  );
}

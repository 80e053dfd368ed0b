/** Lists of choices at a cell: ours in the place of the grid's, which knows the mouse alone; Alt+Down opens it. */
import { ICommandService, type Injector } from '@univerjs/core';
import {
  ComponentManager,
  IEditorBridgeService,
  ISheetCellDropdownManagerService,
} from '@univerjs/preset-sheets-core';
import { CellList } from './CellList';
import type { GridPlace } from './entryGuard';

/** The grid's names for its list, and for what opens one. */
const LIST = 'sheets.dropdown.list';
const OPEN = 'sheet.operation.show-data-validation-dropdown';

/** Keys pressed between the one that asks for the list and its being there. */
let waiting: KeyboardEvent[] | undefined;
const LONGEST_WAIT = 2_000;

/** A list has the keyboard now. */
export function listIsThere(input: HTMLElement | null): void {
  const keys = waiting ?? [];
  waiting = undefined;
  // Each finds the list as the one before it left it.
  const pass = (): void => {
    const next = keys.shift();
    if (!next || !input?.isConnected) return;
    // Nothing newer types into a field as a person does, so that the field hears of it and can undo it.
    // eslint-disable-next-line @typescript-eslint/no-deprecated
    if (next.key.length === 1) document.execCommand('insertText', false, next.key);
    else
      input.dispatchEvent(new KeyboardEvent('keydown', { key: next.key, bubbles: true, cancelable: true }));
    setTimeout(pass);
  };
  setTimeout(pass);
}

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
      if (waiting) {
        waiting.push(event);
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
      waiting = [];
      setTimeout(() => (waiting = undefined), LONGEST_WAIT);
      const { unitId, subUnitId, row, col: column } = cell;
      injector.get(ICommandService).syncExecuteCommand(OPEN, { unitId, subUnitId, row, column });
    },
    true,
  );
}

import type { FUniver } from '@univerjs/core/facade';

/** What this page adds to the menu of a cell. */
export function addToCellMenu(api: FUniver, asksForm: () => void): void {
  api
    .createMenu({
      id: 'moldsheet.form-here',
      title: 'Write a form here…',
      action: () => {
        // The menu gives the keyboard back to the sheet when it goes.
        setTimeout(asksForm);
      },
    })
    .appendTo(['contextMenu.mainArea', 'contextMenu.others']);
}

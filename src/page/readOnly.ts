import type { GridCommand } from './grid';

/** What looks around in a workbook and changes nothing of it. */
const LOOKS =
  /^sheet\.command\.(copy|(change|set)-zoom-ratio|(expand|move)-selection.*|scroll-.*|set-scroll-relative|select-(all|range)|set-worksheet-activate|view-.*|show-menu-list)$/;

export const READ_ONLY =
  'This workbook is open in another tab: here it can be read. Change it there, or take a copy.';

/** An editor that opens where nothing can be entered would mislead. */
const EDITOR = 'sheet.operation.set-cell-edit-visible';

/** Whether a command may run on a workbook that another tab changes. */
export const onlyLooks = ({ id, params }: GridCommand): boolean =>
  id === EDITOR ? !(params as { readonly visible: boolean }).visible : LOOKS.test(id);

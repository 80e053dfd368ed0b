import type { Sheet, Workbook } from '../package/model';

/** What a command of the grid is about, as far as it says. */
export interface GridCommand {
  readonly id: string;
  /** Index of the sheet it is for in the workbook as it was opened; undefined for a sheet added since. */
  readonly openedSheet: number | undefined;
}

const SHEET = /^sheet\.command\.(remove-sheet|set-worksheet-order|set-worksheet-hidden|set-tab-color)$/;
const NAME = /^sheet\.command\.(set-defined-name|remove-defined-name)$/;
const MOVES_CELLS =
  /^sheet\.command\.(insert-(row|col|multi|range)|append-row|remove-(row|col)|move-(rows|cols)|delete-range-move)/;

/**
 * Why a command is not let through: saving keeps the file as it was but for its cells, so what moves the ground under
 * the rest of it would leave it wrong without a word. Undefined where nothing speaks against it.
 */
export function refusalOf({ id, openedSheet }: GridCommand, workbook: Workbook): string | undefined {
  const sheet = openedSheet === undefined ? undefined : workbook.sheets[openedSheet];
  if (sheet && SHEET.test(id)) {
    return 'A sheet that came with the file keeps its place here: other parts of the file refer to it.';
  }
  if (sheet && id === 'sheet.command.set-worksheet-name' && namesSheets(workbook)) {
    return 'A sheet of this file cannot be renamed here yet: names, rules or drawings in it refer to its sheets.';
  }
  if (NAME.test(id) && workbook.names.length > 0) {
    return 'Names that came with the file cannot be changed here yet; new ones can be added.';
  }
  if (!sheet || !MOVES_CELLS.test(id)) return undefined;
  const fixed = fixedInPlace(sheet, workbook);
  return fixed === undefined
    ? undefined
    : `Rows and columns of this sheet cannot be inserted, moved or removed here yet: its ${fixed} would not move with them.`;
}

/** Something of the sheet that the file keeps by its place. */
function fixedInPlace(sheet: Sheet, workbook: Workbook): string | undefined {
  if (sheet.merges.length > 0) return 'merged cells';
  if (sheet.tables.length > 0) return 'tables';
  if (sheet.validations.length > 0) return 'rules for entries';
  if (sheet.conditionalFormats.length > 0) return 'conditional formats';
  if (sheet.hyperlinks.length > 0) return 'links';
  if (sheet.notes.length > 0) return 'notes';
  if (workbook.names.length > 0) return 'named cells';
  if (sheet.rows.some(({ height, hidden }) => height !== undefined || hidden)) return 'row heights';
  return hasDrawings(workbook) ? 'drawings' : undefined;
}

/** Whether anything but the formulas of cells may name a sheet. */
function namesSheets(workbook: Workbook): boolean {
  const ruled = workbook.sheets.some(
    ({ validations, conditionalFormats, hyperlinks }) =>
      validations.length + conditionalFormats.length + hyperlinks.length > 0,
  );
  return ruled || workbook.names.length > 0 || hasDrawings(workbook);
}

function hasDrawings(workbook: Workbook): boolean {
  return [...workbook.parts.keys()].some((part) => /^xl\/(drawings|charts|pivotTables)\//.test(part));
}

const UNKEPT: Readonly<Record<string, string>> = {
  'sheet.mutation.set-worksheet-col-width': 'column widths',
  'sheet.mutation.set-col-hidden': 'hidden columns',
  'sheet.mutation.set-col-visible': 'hidden columns',
  'sheet.mutation.set-worksheet-row-height': 'row heights',
  'sheet.mutation.set-row-hidden': 'hidden rows',
  'sheet.mutation.set-row-visible': 'hidden rows',
  'sheet.mutation.add-worksheet-merge': 'merged cells',
  'sheet.mutation.remove-worksheet-merge': 'merged cells',
  'sheet.mutation.set-frozen': 'frozen rows and columns',
  'sheet.mutation.toggle-gridlines': 'gridlines',
};

/** What a change concerns that saving leaves as it was in the file; undefined where it is saved. */
export function unkeptBy({ id, openedSheet }: GridCommand): string | undefined {
  return openedSheet === undefined ? undefined : UNKEPT[id];
}

import { readReference } from '../cells/reference';
import { Refusal } from '../core/refusal';
import type { Workbook } from '../package/model';
import type { WorkbookCopy } from '../whatif/copy';
import type { CellRef, Named } from '../whatif/plan';
import { isSameName, readCell } from '../whatif/plan';
import type { Option } from './command';
import { Failure } from './command';
import { LIMITS } from './limits';
import { openWorkbook } from './workbookFile';

export const CELLS_HELP =
  "Cells are written as Insert!C6 or 'Two words'!C6; without a sheet they are on the one in front. A cell's name does too: draft.";

export const OVER_FORMULAS: Option = {
  type: 'boolean',
  says: 'Let values stand in for the formulas of the cells that are varied.',
};

/** Does its work on a calculated copy of the workbook in a file; the sheet is the one in front. */
export async function onCopy<T>(
  path: string,
  part: (copy: WorkbookCopy, sheet: string, named: Named) => Promise<T>,
): Promise<T> {
  const workbook = await calculated(await openWorkbook(path));
  const [{ WorkbookCopy: Copy }, { worksheetFunctions }] = await Promise.all([
    import('../whatif/copy'),
    import('../call/functions'),
  ]);
  const copy = new Copy(workbook, worksheetFunctions, LIMITS);
  try {
    return await part(copy, workbook.sheets[workbook.activeSheet]?.name ?? '', namedIn(workbook));
  } catch (error) {
    if (error instanceof Refusal) throw new Failure(error.message);
    throw error;
  } finally {
    copy.dispose();
  }
}

/** The cells that have names; a name of several cells is none. */
export const namedIn =
  ({ names }: Workbook): Named =>
  (wanted) => {
    const formula = names.find(({ name, hidden }) => !hidden && isSameName(name, wanted))?.formula ?? '';
    const { sheet, area } = readReference(formula) ?? {};
    return sheet !== undefined && area?.top === area?.bottom && area?.left === area?.right && area
      ? { sheet, row: area.top, column: area.left }
      : undefined;
  };

/** A file may hold results that are old, or none. */
export async function calculated(workbook: Workbook): Promise<Workbook> {
  const [{ recalculate }, { readWorkbook, saveWorkbook }, { worksheetFunctions }] = await Promise.all([
    import('../workbook/recalculate'),
    import('../package'),
    import('../call/functions'),
  ]);
  const results = await recalculate(workbook, worksheetFunctions, LIMITS);
  return readWorkbook(
    saveWorkbook(
      workbook,
      results.filter(({ changed }) => changed),
    ),
    worksheetFunctions.map(({ id }) => id),
  );
}

/** `Insert!C6=3:15:1` cut in two. */
export function readSetting(text: string, sheet: string, named?: Named): [cell: CellRef, values: string] {
  const [, cell, values] = /^((?:'(?:[^']|'')*'!)?[^=]+)=(.*)$/s.exec(text) ?? [];
  if (cell === undefined || values === undefined) {
    throw new Failure(`--set ${text} has no values; write it as Insert!C6=3:15:1.`);
  }
  return [readCell(cell, sheet, named), values];
}

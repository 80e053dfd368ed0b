import { worksheetFunctions } from '../call/functions';
import type { WorkbookTrial } from '../panel/host';
import { WorkbookCopy } from '../whatif/copy';
import { isFaithful } from '../whatif/faithful';
import type { CellRef } from '../whatif/plan';
import { readOpenWorkbook } from './files';

/**
 * A copy of the open workbook, read from Excel once: no waiting for Excel after every value. Undefined where the copy
 * would not calculate as Excel does, or Excel does not hand over its file.
 */
export async function copyOfOpenWorkbook(
  inputs: readonly CellRef[],
  results: readonly CellRef[],
): Promise<WorkbookTrial | undefined> {
  try {
    const workbook = await readOpenWorkbook();
    if (!isFaithful(workbook, worksheetFunctions, inputs, results)) return undefined;
    return new WorkbookCopy(workbook, worksheetFunctions);
  } catch {
    return undefined;
  }
}

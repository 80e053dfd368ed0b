import { worksheetFunctions } from '../call/functions';
import type { Workbook } from '../package/model';
import type { Host, WorkbookTrial } from '../panel/host';
import { journalOf } from '../panel/whatif/journal';
import { WorkbookCopy } from '../whatif/copy';
import { isFaithful } from '../whatif/faithful';
import type { CellRef } from '../whatif/plan';
import type { Journal, TrialCells } from '../whatif/run';
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

/** The open workbook, and where values are to be tried in it itself because a copy would not calculate as Excel does. */
export async function trialIn(
  host: Host,
  inputs: readonly CellRef[],
  results: readonly CellRef[],
): Promise<{
  readonly workbook: Workbook;
  readonly there?: { readonly cells: TrialCells; readonly journal: Journal };
}> {
  const workbook = await readOpenWorkbook();
  if (isFaithful(workbook, worksheetFunctions, inputs, results)) return { workbook };
  return { workbook, there: { cells: host, journal: journalOf(host.address ?? '') } };
}

import type { WorksheetFunction } from '../call/worksheetFunction';
import { writeFormHere } from '../panel/formHere';
import type { FormOutcome, Host, Place } from '../panel/host';
import { readOpenWorkbook } from './files';

/** Writes a function as a form into the sheet in front of Excel. */
export async function writeFormInExcel(
  host: Host,
  fn: WorksheetFunction,
  at: Place | undefined,
): Promise<FormOutcome> {
  const { writeForm, writtenText } = await import('./writeForm');
  return writeFormHere(host, fn, at, {
    read: readOpenWorkbook,
    write: async (plan) => {
      await writeForm(plan);
      return writtenText(plan);
    },
  });
}

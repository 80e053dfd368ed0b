import { CellError } from '../src/cells/value';
import { worksheetFunctions } from '../src/call/functions';
import type { System } from '../src/core/quantity';
import { recalculate } from '../src/workbook/recalculate';
import { cellAddress } from '../src/cells/address';
import { newWorkbook, saveWorkbook } from '../src/package';
import type { Design } from './description';
import { workbookOf } from './sheet';

/** The file of a design with the results of all its formulas in it, and what is in error. */
export async function calculated(
  design: Design,
  units: System = 'in',
): Promise<{ bytes: Uint8Array; errors: string[] }> {
  const workbook = newWorkbook(workbookOf(design, units));
  const results = await recalculate(workbook, worksheetFunctions);
  const errors = results.flatMap(({ sheet, row, column, value, formula }) =>
    value instanceof CellError
      ? [`${sheet}!${cellAddress(row, column)} ${value.code} ${value.message} =${formula}`]
      : [],
  );
  return { bytes: saveWorkbook(workbook, results), errors };
}

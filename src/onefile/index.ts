/** The program of the one-file page: reads the workbook that the page carries, and brings it to life. */
import { worksheetFunctions } from '../call/functions';
import { readWorkbook } from '../package';
import { readDecimalSign } from '../panel/decimalSign';
import { Desk } from './desk';
import { View } from './view';

const text = document.getElementById('workbook')?.textContent.trim() ?? '';
const state = document.getElementById('state');

try {
  readDecimalSign();
  const bytes = Uint8Array.from(atob(text), (one) => one.charCodeAt(0));
  const workbook = readWorkbook(
    bytes,
    worksheetFunctions.map(({ id }) => id),
  );
  new View(new Desk(workbook, worksheetFunctions)).show();
} catch (error) {
  if (state)
    state.textContent = `The calculation did not start (${error instanceof Error ? error.message : String(error)}). The values are those of ${document.body.dataset['date'] ?? ''}, and nothing can be changed.`;
}

import type { WorksheetFunction } from '../call/worksheetFunction';
import type { System } from '../core/quantity';
import type { Section } from '../forms/sections/section';
import { outcomeOf, writeFormHere } from '../panel/formHere';
import type { FormInputs, FormOutcome, Host, Place } from '../panel/host';
import { readOpenWorkbook } from './files';

/** Writes a function as a form into the sheet in front of Excel. */
export async function writeFormInExcel(
  host: Host,
  fn: WorksheetFunction,
  at: Place | undefined,
  inputs: FormInputs | undefined,
): Promise<FormOutcome> {
  const { writePlans, writtenText } = await import('./writePlans');
  return writeFormHere(
    host,
    fn,
    { at, inputs },
    {
      read: readOpenWorkbook,
      write: async (plan) => {
        await writePlans({ sheets: [], plans: [plan] });
        return writtenText('form', plan);
      },
    },
  );
}

/** Makes sheets of a design behind those of the workbook; gives what is to be said of it. */
export async function makeDesignInExcel(sections: readonly Section[], system: System): Promise<string> {
  const [{ planNewSheets }, { writePlans, addedText }, workbook] = await Promise.all([
    import('../forms/newSheets'),
    import('./writePlans'),
    readOpenWorkbook(),
  ]);
  const design = planNewSheets({ sections, system }, workbook);
  const refused = await writePlans(design);
  return [addedText(design), refused].filter(Boolean).join(' ');
}

/** Writes a design into the sheet in front, at the selected cell or another place; nothing is overwritten. */
export async function writeDesignInExcel(
  host: Host,
  sections: readonly Section[],
  system: System,
  at: Place | undefined,
): Promise<FormOutcome> {
  const selection = await host.readSelection();
  if (!selection) throw new Error('Select the cell where the design sheet is to begin.');
  const [{ planDesign }, { groundOf }, { writePlans, writtenText }, workbook] = await Promise.all([
    import('../forms/design'),
    import('../forms/groundOf'),
    import('./writePlans'),
    readOpenWorkbook(),
  ]);
  return outcomeOf(async () => {
    const { row, column } = at ?? selection;
    const ground = groundOf(workbook, selection.sheet);
    const { plan } = planDesign({ sections, system }, ground, { row, column });
    await writePlans({ sheets: [], plans: [plan] });
    const own = ground.units?.system ?? system;
    const units = own === system ? '' : ` Its units are those of the sheet: ${own}.`;
    return { says: writtenText('design sheet', plan) + units };
  });
}

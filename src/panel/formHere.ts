import { cellAddress } from '../cells/address';
import type { WorksheetFunction } from '../call/worksheetFunction';
import { catalogue } from '../catalogue';
import type { FormOptions } from '../forms/form';
import type { FormPlan } from '../forms/plan';
import type { Workbook } from '../package/model';
import type { FormOutcome, Host, Place } from './host';

/** Examples of the help by function: what the inputs of a form are at first. */
const examples = async (): Promise<Readonly<Record<string, FormOptions['given']>>> => {
  const response = await fetch('help/examples.json');
  if (!response.ok) throw new Error(`The examples could not be loaded (${response.status}).`);
  return (await response.json()) as Record<string, FormOptions['given']>;
};

/** How a host reads the workbook and writes a plan into it; gives what is to be said of it. */
export interface FormWriter {
  read(): Promise<Workbook>;
  write(plan: FormPlan): Promise<string>;
}

/**
 * Writes a function as a form into the sheet in front, at the selected cell or another place. Nothing is overwritten:
 * where cells are filled, the outcome names a place where the form fits.
 */
export async function writeFormHere(
  host: Host,
  { id, aliasOf }: WorksheetFunction,
  wanted: Place | undefined,
  writer: FormWriter,
): Promise<FormOutcome> {
  const definition = catalogue.find(({ name }) => name === (aliasOf ?? id));
  const selection = await host.readSelection();
  if (!definition || !selection) throw new Error('Select the cell where the form is to begin.');
  const [{ planForm }, { groundOf }, workbook, given] = await Promise.all([
    import('../forms/form'),
    import('../forms/groundOf'),
    writer.read(),
    examples(),
  ]);
  return outcomeOf(() =>
    writer.write(
      planForm(definition, groundOf(workbook, selection.sheet), {
        at: wanted ?? { row: selection.row, column: selection.column },
        given: given[definition.name] ?? {},
      }),
    ),
  );
}

/** What became of it, in words, and another place where the wanted one is filled. */
export async function outcomeOf(write: () => Promise<string>): Promise<FormOutcome> {
  const { CannotWrite } = await import('../forms/plan');
  try {
    return { says: await write() };
  } catch (error) {
    if (!(error instanceof CannotWrite)) throw error;
    const { message: says, instead } = error;
    return instead
      ? { says, instead: { ...instead, called: cellAddress(instead.row, instead.column) } }
      : { says };
  }
}

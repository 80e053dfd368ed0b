import { cellAddress } from '../cells/address';
import type { WorksheetFunction } from '../call/worksheetFunction';
import { catalogue } from '../catalogue';
import type { FormOptions, Joinable } from '../forms/form';
import type { FormPlan } from '../forms/plan';
import type { Workbook } from '../package/model';
import type { FormInputs, FormOutcome, Host, Place } from './host';

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

/** `There are draft at D24 and friction at D27 already.` */
function sharingText(known: readonly Joinable[], here: string): string {
  const cells = known.map(({ known: { name, sheet, row, column } }) => {
    const cell = cellAddress(row, column);
    return `${name} at ${sheet === here ? '' : `${sheet}!`}${cell}`;
  });
  const last = cells.pop() ?? '';
  const list = cells.length > 0 ? `${cells.join(', ')} and ${last}` : last;
  return `The workbook has ${list} already. Shared, one cell serves all; else the form gets cells of its own.`;
}

/** Undefined where a person has not decided: the selected cell, and the inputs that there are to be asked about. */
interface Wanted {
  readonly at: Place | undefined;
  readonly inputs: FormInputs | undefined;
}

/**
 * Writes a function as a form into the sheet in front, at the selected cell or another place. Nothing is overwritten:
 * where cells are filled, the outcome names a place where the form fits. Where the workbook has inputs of the form
 * already, the outcome asks whether to share them.
 */
export async function writeFormHere(
  host: Host,
  { id, aliasOf }: WorksheetFunction,
  wanted: Wanted,
  writer: FormWriter,
): Promise<FormOutcome> {
  const definition = catalogue.find(({ name }) => name === (aliasOf ?? id));
  const selection = await host.readSelection();
  if (!definition || !selection) throw new Error('Select the cell where the form is to begin.');
  const [{ joinable, planForm }, { groundOf }, workbook, given] = await Promise.all([
    import('../forms/form'),
    import('../forms/groundOf'),
    writer.read(),
    examples(),
  ]);
  return outcomeOf(async () => {
    const at = wanted.at ?? { row: selection.row, column: selection.column };
    const ground = groundOf(workbook, selection.sheet);
    const plan = planForm(definition, ground, {
      at,
      given: given[definition.name] ?? {},
      ...(wanted.inputs === 'shared' && { join: 'all' }),
    });
    const known = wanted.inputs === undefined ? joinable(definition, ground) : [];
    return known.length > 0
      ? { says: sharingText(known, ground.sheet), couldShare: at }
      : { says: await writer.write(plan) };
  });
}

/** What became of it, and another place where the wanted one is filled. */
export async function outcomeOf(write: () => Promise<FormOutcome>): Promise<FormOutcome> {
  const { CannotWrite } = await import('../forms/plan');
  try {
    return await write();
  } catch (error) {
    if (!(error instanceof CannotWrite)) throw error;
    const { message: says, instead } = error;
    return instead
      ? { says, instead: { ...instead, called: cellAddress(instead.row, instead.column) } }
      : { says };
  }
}

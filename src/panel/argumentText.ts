import { NAMESPACE } from '../cells/namespace';
import type { WorksheetFunction, WorksheetParameter } from '../call/worksheetFunction';

/** What an argument means, with the words it takes where the meaning does not name them already. */
export function argumentText({ says, choices = [] }: WorksheetParameter): string {
  const quoted = choices.map((choice) => `"${choice}"`);
  if (quoted.every((choice) => says.includes(choice))) return says;
  return `${says.replace(/\.$/, '')}. One of: ${quoted.join(', ')}.`;
}

/** `=MOLD.SEAT.FREEDRAFT(friction, [units])`. */
export function signature({ id, parameters }: WorksheetFunction): string {
  const list = parameters.map(({ name, optional, repeating }) => {
    const shown = repeating ? `${name}, …` : name;
    return optional ? `[${shown}]` : shown;
  });
  return `=${NAMESPACE}.${id}(${list.join(', ')})`;
}

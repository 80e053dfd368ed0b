import type { WorksheetParameter } from '../call/worksheetFunction';

/** What an argument means, with the words it takes where the meaning does not name them already. */
export function argumentText({ says, choices = [] }: WorksheetParameter): string {
  const quoted = choices.map((choice) => `"${choice}"`);
  if (quoted.every((choice) => says.includes(choice))) return says;
  return `${says.replace(/\.$/, '')}. One of: ${quoted.join(', ')}.`;
}

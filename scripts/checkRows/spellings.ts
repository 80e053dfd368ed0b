import { UNITS_PARAMETER } from '../../src/derive/words';
import type { WorksheetFunction } from '../../src/call/worksheetFunction';
import { tokenize, type Token } from '../../src/cells/formulaTokens';
import { callAt, textOf } from '../../src/work/calls';

/** The two places in which a call may name its units. */
export const SPELLINGS = ['early', 'in their place'] as const;
export type Spelling = (typeof SPELLINGS)[number];

/** A formula with the units of all its calls in one place; inches are written out where none are named. */
export function respelled(
  formula: string,
  spelling: Spelling,
  functions: ReadonlyMap<string, WorksheetFunction>,
): string {
  return `=${rewritten(tokenize(formula.replace(/^=/, '')), spelling, functions)}`;
}

function rewritten(
  tokens: readonly Token[],
  spelling: Spelling,
  functions: ReadonlyMap<string, WorksheetFunction>,
): string {
  const out: string[] = [];
  for (let at = 0; at < tokens.length; at++) {
    const call = callAt(tokens, at);
    if (!call) {
      out.push(tokens[at]?.text ?? '');
      continue;
    }
    const args = call.args.map((arg) => rewritten(arg, spelling, functions));
    const place = unitsPlace(call.id, call.args, functions);
    out.push(
      `${tokens[at]?.text ?? ''}(${(place === undefined ? args : placed(args, place, spelling)).join(',')})`,
    );
    at = call.end;
  }
  return out.join('');
}

/** Where the units of a call have their place; a function that shows another's work passes that one's arguments on. */
function unitsPlace(
  id: string,
  args: readonly (readonly Token[])[],
  functions: ReadonlyMap<string, WorksheetFunction>,
): number | undefined {
  const parameters = functions.get(id)?.parameters ?? [];
  const own = parameters.findIndex(({ name }) => name === UNITS_PARAMETER.name);
  if (own >= 0) return own;
  const passedOn = parameters.findIndex(({ repeating }) => repeating);
  if (passedOn < 0 || args.length <= passedOn) return undefined;
  const named = textOf(args[0] ?? [])
    .replaceAll('"', '')
    .toUpperCase();
  const its = functions.get(named)?.parameters.findIndex(({ name }) => name === UNITS_PARAMETER.name) ?? -1;
  return its < 0 ? undefined : passedOn + its;
}

function placed(args: readonly string[], place: number, spelling: Spelling): string[] {
  // More arguments than it takes are refused as they are.
  if (args.length > place + 1) return [...args];
  const last = args.map((arg) => arg.trim() !== '').lastIndexOf(true);
  const isUnits = last === place || /^"\s*(?:in|mm)\s*"$/i.test(args[last] ?? '');
  const units = isUnits ? (args[last] ?? '') : '"in"';
  const others = args.slice(0, isUnits ? last : last + 1);
  const end = others.map((arg) => arg.trim() !== '').lastIndexOf(true) + 1;
  // Units that are a range are looked for in their place alone.
  if (spelling === 'early' && /^"/.test(units)) return [...others.slice(0, end), units];
  return [...others, ...Array.from({ length: place - others.length }, () => ''), units];
}

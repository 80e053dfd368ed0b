import { catalogue } from '../catalogue';
import type { Definition } from '../core/define';
import { NAMESPACE } from '../cells/namespace';
import { isCall, tokenize, type Token } from '../cells/formulaTokens';

/** A call of one of our functions in a formula. */
export interface Call {
  /** Without the namespace, in capitals. */
  readonly id: string;
  readonly args: readonly (readonly Token[])[];
  /** As it stands in the formula. */
  readonly text: string;
}

const PREFIX = `${NAMESPACE}.`;

/** Every call of ours in a formula, those inside of others too, in the order in which their names stand. */
export function callsIn(formula: string): Call[] {
  const tokens = tokenize(formula.replace(/^=/, ''));
  return tokens.flatMap((_, at) => callAt(tokens, at) ?? []);
}

/** The call whose name stands here. */
export function callAt(tokens: readonly Token[], at: number): (Call & { readonly end: number }) | undefined {
  const name = tokens[at]?.text.toUpperCase() ?? '';
  if (!isCall(tokens, at) || !name.startsWith(PREFIX)) return undefined;
  const args: Token[][] = [[]];
  let depth = 0;
  let end = at + 1;
  for (; end < tokens.length; end++) {
    const token = tokens[end] as Token;
    if (token.kind === 'open') depth++;
    if (token.kind === 'close') depth--;
    if (depth === 0) break;
    if (token.kind === 'comma' && depth === 1) args.push([]);
    else if (end > at + 1) args.at(-1)?.push(token);
  }
  const isEmpty = args.length === 1 && trimmed(args[0] ?? []).length === 0;
  return {
    id: name.slice(PREFIX.length),
    args: isEmpty ? [] : args.map(trimmed),
    text: textOf(tokens.slice(at, end + 1)),
    end,
  };
}

export const textOf = (tokens: readonly Token[]): string => tokens.map(({ text }) => text).join('');

export function trimmed(tokens: readonly Token[]): readonly Token[] {
  let from = 0;
  let to = tokens.length;
  while (tokens[from]?.kind === 'space') from++;
  while (to > from && tokens[to - 1]?.kind === 'space') to--;
  return tokens.slice(from, to);
}

/** The definition that a call names; the functions about functions have none. */
export const definitionOf = ({ id }: Pick<Call, 'id'>): Definition | undefined =>
  catalogue.find(({ name }) => name === id);

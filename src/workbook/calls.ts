import { NAMESPACE } from '../cells/namespace';
import { isCall, tokenize, type Token } from '../cells/formulaTokens';

/** A call of one of our functions inside a formula; offsets count characters. */
export interface Call {
  readonly start: number;
  readonly end: number;
  /** Without the namespace. */
  readonly id: string;
  readonly args: readonly Span[];
}

export interface Span {
  readonly start: number;
  readonly end: number;
}

const OURS = `${NAMESPACE}.`;

/** The outermost calls of our functions, from left to right. */
export function outerCalls(formula: string): Call[] {
  const tokens = tokenize(formula);
  const starts = startsOf(tokens);
  const calls: Call[] = [];
  for (let at = 0; at < tokens.length; at++) {
    const name = tokens[at]?.text ?? '';
    if (!isCall(tokens, at) || !name.toUpperCase().startsWith(OURS)) continue;
    const { close, commas } = bracket(tokens, at + 1);
    const edges = [at + 1, ...commas, close];
    const spans = edges.slice(0, -1).map((edge, i): Span => ({
      start: starts[edge + 1] ?? formula.length,
      end: starts[edges[i + 1] ?? close] ?? formula.length,
    }));
    const isEmpty = spans.length === 1 && formula.slice(spans[0]?.start, spans[0]?.end).trim() === '';
    calls.push({
      start: starts[at] ?? 0,
      end: (starts[close] ?? formula.length) + 1,
      id: name.slice(OURS.length).toUpperCase(),
      args: isEmpty ? [] : spans,
    });
    at = close;
  }
  return calls;
}

function startsOf(tokens: readonly Token[]): number[] {
  let start = 0;
  return tokens.map(({ text }) => {
    const own = start;
    start += text.length;
    return own;
  });
}

/** The tokens that close a bracket and divide it at its own level. */
function bracket(tokens: readonly Token[], open: number): { close: number; commas: number[] } {
  const commas: number[] = [];
  let depth = 0;
  for (let at = open; at < tokens.length; at++) {
    const kind = tokens[at]?.kind;
    if (kind === 'open') depth++;
    else if (kind === 'close' && --depth === 0) return { close: at, commas };
    else if (kind === 'comma' && depth === 1) commas.push(at);
  }
  return { close: tokens.length, commas };
}

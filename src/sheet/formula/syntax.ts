/** The text of a formula as a tree. */
import { parse, tokenize, type Token } from '@borgar/fx/xlsx';
import { Keep } from '../values';

/** As the parser gives it; its own types know neither left-out arguments nor calls of what a call gave. */
export type Node =
  | { readonly type: 'Literal'; readonly value: string | number | boolean }
  | { readonly type: 'ErrorLiteral'; readonly value: string }
  | ReferenceNode
  | { readonly type: 'UnaryExpression'; readonly operator: string; readonly arguments: readonly [Node] }
  | BinaryNode
  | CallNode
  | { readonly type: 'ArrayExpression'; readonly elements: readonly (readonly Node[])[] }
  | LetNode
  | LambdaNode;

export interface ReferenceNode {
  readonly type: 'ReferenceIdentifier';
  readonly value: string;
  readonly kind: 'name' | 'table' | 'range' | 'beam';
}
export interface BinaryNode {
  readonly type: 'BinaryExpression';
  readonly operator: string;
  readonly arguments: readonly [Node, Node];
}
export interface CallNode {
  readonly type: 'CallExpression';
  readonly callee: Node | { readonly type: 'Identifier'; readonly name: string };
  readonly arguments: readonly (Node | null)[];
}
export interface LetNode {
  readonly type: 'LetExpression';
  readonly declarations: readonly { readonly id: { readonly name: string }; readonly init: Node | null }[];
  readonly body: Node | null;
}
export interface LambdaNode {
  readonly type: 'LambdaExpression';
  readonly params: readonly { readonly name: string }[];
  readonly body: Node | null;
}

/** How deep brackets may nest: the parser calls itself, and Excel takes 64 levels of functions. */
const DEEPEST = 400;

/** Ends the name of a LAMBDA's parameter that stood in brackets: `LAMBDA(x,[y],…)`. */
export const OPTIONAL = '\u0002';

/** The tree of a formula without its `=`. Keeps what it cannot read. */
export function readFormula(text: string): Node {
  if (nesting(text) > DEEPEST) throw new Keep('Its brackets are nested too deeply.');
  try {
    const tokens = tokenize(`=${text}`, { withLocation: false });
    return parse(readable(tokens), { looseRefCalls: true }) as unknown as Node;
  } catch (error) {
    throw new Keep(`It cannot be read: ${error instanceof Error ? error.message : String(error)}.`);
  }
}

function nesting(text: string): number {
  let depth = 0;
  let deepest = 0;
  for (let at = 0; at < text.length; at++) {
    const c = text.charCodeAt(at);
    if (c === 34) {
      const end = text.indexOf('"', at + 1);
      at = end < 0 ? text.length : end;
    } else if (c === 40 || c === 123) deepest = Math.max(deepest, ++depth);
    else if (c === 41 || c === 125) depth--;
  }
  return deepest;
}

const isLost = (token: Token | undefined): boolean => token?.type === 'error' && token.value === '#REF!';

/**
 * The tokens without what the parser trips over: `Sheet1!#REF!` and `#REF!A1` are `#REF!`, a `+` before a number of
 * an array constant says nothing, the brackets of an optional parameter are written as a mark on its name.
 */
function readable(tokens: Token[]): Token[] {
  let braces = 0;
  return tokens
    .filter((token, at) => {
      const next = tokens[at + 1];
      const before = tokens[at - 1];
      if (token.value === '{') braces++;
      if (token.value === '}') braces--;
      if (token.value === '+' && braces > 0) return false;
      if (isLost(next) && /^context/.test(token.type)) return false;
      if (token.value === '!' && (isLost(next) || isLost(before))) return false;
      return !(isLost(before) && /^range/.test(token.type));
    })
    .map((token) =>
      /^\[[\p{L}_][\p{L}\p{N}_.]*\]$/u.test(token.value) && hasLambda(tokens)
        ? { ...token, type: 'range_named', value: token.value.slice(1, -1) + OPTIONAL }
        : token,
    );
}

const hasLambda = (tokens: readonly Token[]): boolean =>
  tokens.some(({ type, value }) => type === 'func' && value.toUpperCase() === 'LAMBDA');

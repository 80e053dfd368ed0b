/** Cuts a worksheet formula into tokens; joined again they give the same text. */
export type TokenKind =
  | 'string'
  /** A sheet's name in single quotes. */
  | 'quoted'
  /** A function, a defined name, a table, an unquoted sheet, a cell, a column letter, TRUE. */
  | 'name'
  | 'number'
  | 'error'
  /** Square brackets with all they hold: columns of a table, or the number of another workbook. */
  | 'bracket'
  | 'open'
  | 'close'
  | 'comma'
  | 'operator'
  | 'space';

export interface Token {
  readonly kind: TokenKind;
  readonly text: string;
}

/** No two rules can begin at the same character but the last; the commonest come first. */
const RULES: readonly (readonly [TokenKind, RegExp])[] = [
  ['name', /[\p{L}_\\$][\p{L}\p{M}\p{N}_.?\\$]*/uy],
  ['number', /(?:\d+\.?\d*|\.\d+)(?:E[+-]?\d+)?/iy],
  ['string', /"(?:[^"]|"")*(?:"|$)/y],
  ['quoted', /'(?:[^']|'')*(?:'|$)/y],
  ['error', /#(?:REF!|N\/A|DIV\/0!|NAME\?|NULL!|NUM!|VALUE!|SPILL!|CALC!|GETTING_DATA|FIELD!|BLOCKED!)/iy],
  ['space', /\s+/y],
  ['operator', /<>|<=|>=|[^]/y],
];

export function tokenize(formula: string): Token[] {
  const tokens: Token[] = [];
  for (let at = 0; at < formula.length;) {
    const token =
      formula[at] === '[' ? { kind: 'bracket' as const, text: bracket(formula, at) } : match(formula, at);
    tokens.push(token);
    at += token.text.length;
  }
  return tokens;
}

const isPlainStart = (code: number) =>
  (code >= 65 && code <= 90) || (code >= 97 && code <= 122) || code === 36 || code === 95;
const isPlain = (code: number) => isPlainStart(code) || (code >= 48 && code <= 57) || code === 46;

/** A name of letters, digits, dots and the like alone, which most are: found faster than by its rule. */
function plainName(formula: string, at: number): string | undefined {
  if (!isPlainStart(formula.charCodeAt(at))) return undefined;
  let end = at + 1;
  while (isPlain(formula.charCodeAt(end))) end++;
  const next = formula.charCodeAt(end);
  const mayGoOn = next > 127 || next === 63 || next === 92;
  return mayGoOn ? undefined : formula.slice(at, end);
}

/** Characters that are a token each, whatever follows: found faster than by their rules. */
const SINGLE: ReadonlyMap<string, Token> = new Map(
  (
    [
      ['open', '({'],
      ['close', ')}'],
      ['comma', ',;'],
      ['operator', '+-*/^&=:!@%'],
    ] as const
  ).flatMap(([kind, characters]) => Array.from(characters, (text) => [text, { kind, text }] as const)),
);

function match(formula: string, at: number): Token {
  const name = plainName(formula, at);
  if (name !== undefined) return { kind: 'name', text: name };
  const single = SINGLE.get(formula.charAt(at));
  if (single !== undefined) return single;
  for (const [kind, rule] of RULES) {
    rule.lastIndex = at;
    const text = rule.exec(formula)?.[0];
    if (text !== undefined) return { kind, text };
  }
  return { kind: 'operator', text: formula.charAt(at) };
}

/** Column names guard the characters `[ ] # ' @` with an apostrophe before them. */
function bracket(formula: string, start: number): string {
  let depth = 0;
  for (let at = start; at < formula.length; at++) {
    const character = formula[at];
    if (character === "'") at++;
    else if (character === '[') depth++;
    else if (character === ']' && --depth === 0) return formula.slice(start, at + 1);
  }
  return formula.slice(start);
}

/** Index of the nearest token that is no space, from `at` in steps of `step`; -1 or the length where there is none. */
export function skipSpace(tokens: readonly Token[], at: number, step: 1 | -1): number {
  while (tokens[at]?.kind === 'space') at += step;
  return at;
}

/** True for a name with its bracket right behind, as in `SUM(`. */
export function isCall(tokens: readonly Token[], at: number): boolean {
  return tokens[at]?.kind === 'name' && tokens[at + 1]?.text === '(';
}

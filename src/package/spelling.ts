/**
 * Formulas as files spell them, and back. Excel stores a custom function as `_xldudf_` with namespace and name,
 * every dot an underscore; a plain `MOLD.SEAT.FORCE(` in a file would stay #NAME? for good, even with the add-in
 * at hand. Newer native functions and the names inside LET and LAMBDA carry prefixes of their own.
 */
import { NAMESPACE } from '../cells/namespace';
import { isCall, skipSpace, tokenize } from '../cells/formulaTokens';
import type { Token } from '../cells/formulaTokens';
import { ARRAY_MAKERS, RANGE_READERS, fileSpelling } from './futureFunctions';

const STORED = '_xldudf_';
const STORED_OURS = `${STORED}${NAMESPACE}_`.toLowerCase();
const TYPED_OURS = `${NAMESPACE}.`.toLowerCase();
const MENTIONS_OURS = new RegExp(`${NAMESPACE}\\.`, 'i');
const BEGINS_WITH_OURS = new RegExp(`^${NAMESPACE}\\.[\\w.]*\\(`, 'i');
/** The functions that bind names of their own. */
const BINDERS = /\b(?:LET|LAMBDA)\(/i;
/** Most formulas stand in a file as they are typed. */
const SPELLED_OTHERWISE = new RegExp(`_xl|#|${NAMESPACE}`, 'i');
const FILE_PREFIXES = /^(?:_xlfn\.|_xlws\.|_xlpm\.|_xlop\.|_xleta\.)+/i;

/** Stored names → typed names, made once per list of function ids (ids without the namespace: `SEAT.FORCE`). */
export type KnownFunctions = ReadonlyMap<string, string>;

export function knownFunctions(ids: Iterable<string>): KnownFunctions {
  return new Map(Array.from(ids, (id) => [id.replaceAll('.', '_').toUpperCase(), id]));
}

export function fromFileSpelling(formula: string, known: KnownFunctions): string {
  if (!SPELLED_OTHERWISE.test(formula)) return formula;
  const tokens = tokenize(formula);
  const out: string[] = [];
  tokens.forEach((token, at) => {
    const name = token.kind === 'name' ? token.text.replace(FILE_PREFIXES, '') : token.text;
    if (token.kind !== 'name' || !isCall(tokens, at)) out.push(name);
    else if (name.toLowerCase().startsWith(STORED_OURS)) {
      // `[2]!` and `Some.xla!` before the name are damage done by other kinds of add-in.
      if (out.at(-1) === '!') out.length -= 2;
      out.push(typedName(name.slice(STORED_OURS.length), known));
    } else out.push(name.toLowerCase().startsWith(TYPED_OURS) ? name.toUpperCase() : name);
  });
  return anchors(out.join(''));
}

/** One that the list does not know keeps its underscores, so that it goes back into a file as it came. */
function typedName(stored: string, known: KnownFunctions): string {
  const upper = stored.toUpperCase();
  return `${NAMESPACE}.${known.get(upper) ?? upper}`;
}

export function toFileSpelling(formula: string): string {
  const tokens = tokenize(singles(anchors(formula)));
  const scopes = BINDERS.test(formula) ? new NameScopes() : undefined;
  return tokens
    .map((token, at) => {
      const isLocal = scopes?.pass(tokens, at) === true;
      if (token.kind === 'bracket') return thisRow(token.text);
      if (token.kind !== 'name') return token.text;
      if (isLocal) return `_xlpm.${token.text}`;
      if (!isCall(tokens, at)) return token.text;
      const isOurs = token.text.toLowerCase().startsWith(TYPED_OURS);
      return isOurs ? `${STORED}${token.text.toUpperCase().replaceAll('.', '_')}` : fileSpelling(token.text);
    })
    .join('');
}

/** The ids, without the namespace, of our functions that the formula calls. */
export function calledFunctions(formula: string): string[] {
  if (!MENTIONS_OURS.test(formula)) return [];
  const tokens = tokenize(formula);
  return tokens
    .filter((token, at) => isCall(tokens, at) && token.text.toLowerCase().startsWith(TYPED_OURS))
    .map((token) => token.text.slice(TYPED_OURS.length).toUpperCase());
}

/** Asked of every formula of a workbook, so most are told without their tokens. */
export const callsOurs = (formula: string): boolean =>
  BEGINS_WITH_OURS.test(formula) || calledFunctions(formula).length > 0;

/**
 * Whether a formula must be marked as a dynamic array. Without the mark Excel reads it the old way: ranges met
 * where one value is wanted are cut to one cell, shown as `@`. A mark too many does no harm in today's programs.
 */
export function needsArrayMark(formula: string): boolean {
  if (callsOurs(formula)) return true;
  const tokens = tokenize(anchors(formula)).filter((token) => token.kind !== 'space');
  const calls: string[] = [];
  return tokens.some((token, at) => {
    if (token.kind === 'open') {
      const before = tokens[at - 1];
      calls.push(token.text === '(' && before?.kind === 'name' ? before.text.toUpperCase() : token.text);
    } else if (token.kind === 'close') calls.pop();
    if (isCall(tokens, at)) return ARRAY_MAKERS.has(token.text.toUpperCase());
    const isArray = token.text === ':' || token.text === '{' || token.kind === 'bracket';
    if (!isArray) return false;
    const around = token.text === '{' ? calls.at(-2) : calls.at(-1);
    if (around === undefined || !RANGE_READERS.has(around))
      return token.kind !== 'bracket' || !/^\[(?:\d+\]|@|\[#This Row\])/i.test(token.text);
    return touchesOperator(tokens, at);
  });
}

/** Does the range or array constant at this place stand beside + - * / ^ & = < >? */
function touchesOperator(tokens: readonly Token[], at: number): boolean {
  const isJoint = (token: Token | undefined) => token?.text === ':' || token?.text === '!';
  const isPiece = (token: Token | undefined) =>
    token !== undefined && (['name', 'quoted', 'number', 'bracket'].includes(token.kind) || isJoint(token));
  let first = at;
  while (isPiece(tokens[first - 1])) first--;
  let last = at;
  if (tokens[at]?.text === '{') while (last < tokens.length && tokens[last]?.text !== '}') last++;
  else while (isPiece(tokens[last + 1])) last++;
  return tokens[first - 1]?.kind === 'operator' || tokens[last + 1]?.kind === 'operator';
}

/** `C1#` → `ANCHORARRAY(C1)`; the hash stands right behind a cell, with or without its sheet. */
function anchors(formula: string): string {
  if (!formula.includes('#')) return formula;
  const tokens = tokenize(formula);
  const out: string[] = [];
  tokens.forEach((token, at) => {
    if (token.text !== '#' || tokens[at - 1]?.kind !== 'name') {
      out.push(token.text);
      return;
    }
    let count = 1;
    if (tokens[at - 2]?.text === '!') {
      count = 3;
      if (tokens[at - 4]?.kind === 'bracket') count = 4;
    }
    const reference = out.splice(-count).join('');
    out.push(`ANCHORARRAY(${reference})`);
  });
  return out.join('');
}

/** `@A1:A9` → `SINGLE(A1:A9)`: the one cell of a range, or value of a call, in line with the formula's own. */
function singles(formula: string): string {
  if (!formula.includes('@')) return formula;
  const tokens = tokenize(formula);
  const out = tokens.map((token) => token.text);
  tokens.forEach((token, at) => {
    if (token.text !== '@') return;
    let end = at + 1;
    for (let depth = 0; end < tokens.length; end++) {
      const { kind, text } = tokens[end] ?? { kind: 'space', text: '' };
      if (kind === 'open') depth++;
      else if (kind === 'close') depth--;
      if (depth < 0) break;
      const isJoint = text === ':' || text === '!';
      if (depth === 0 && !isJoint && !['name', 'quoted', 'bracket', 'number', 'open', 'close'].includes(kind))
        break;
    }
    out[at] = 'SINGLE(';
    out[end - 1] = `${out[end - 1] ?? ''})`;
  });
  return out.join('');
}

/**
 * False for what was typed only half: a program that meets it in a file calls the whole file damaged. Not a
 * grammar; what passes may still be nonsense, which spreadsheets show as an error.
 */
export function isComplete(formula: string): boolean {
  if (formula.length > 8192) return false;
  const tokens = tokenize(formula);
  const open: string[] = [];
  const isBalanced = tokens.every(({ kind, text }) => {
    if (kind === 'open') open.push(text === '(' ? ')' : '}');
    else if (kind === 'close') return open.pop() === text;
    else if (kind === 'string' || kind === 'quoted') return text.length > 1 && text.endsWith(text.charAt(0));
    else if (kind === 'bracket') return text.endsWith(']');
    else if (kind === 'operator') return /^(?:<>|<=|>=|[-+*/^&=<>%:!#@])$/.test(text);
    return true;
  });
  const last = tokens[skipSpace(tokens, tokens.length - 1, -1)];
  return (
    isBalanced &&
    open.length === 0 &&
    last !== undefined &&
    (last.kind !== 'operator' || /[%#]/.test(last.text))
  );
}

/** `[@Width]` is short for `[[#This Row],[Width]]`, and files have the long form only. */
function thisRow(bracket: string): string {
  if (!bracket.startsWith('[@')) return bracket;
  const column = bracket.slice(2, -1).trim();
  if (column === '') return '[#This Row]';
  return `[[#This Row],${column.startsWith('[') ? column : `[${column}]`}]`;
}

interface Frame {
  readonly call: string;
  argument: number;
  readonly names: Set<string>;
  /** A LET name whose own value is being read: it counts from the next comma on. */
  pending: string | undefined;
}

/** Keeps, token by token, which names are bound by the LETs and LAMBDAs around. */
class NameScopes {
  private readonly frames: Frame[] = [];

  /** Takes the next token; true where it is a bound name, declared or used. */
  pass(tokens: readonly Token[], at: number): boolean {
    const token = tokens[at];
    const frame = this.frames.at(-1);
    if (token?.kind === 'open') {
      const before = tokens[at - 1];
      const call = token.text === '(' && before?.kind === 'name' ? before.text.toUpperCase() : '';
      this.frames.push({ call, argument: 0, names: new Set(), pending: undefined });
    } else if (token?.kind === 'close') this.frames.pop();
    else if (token?.kind === 'comma' && frame !== undefined) {
      frame.argument++;
      if (frame.pending !== undefined && frame.argument % 2 === 0) {
        frame.names.add(frame.pending);
        frame.pending = undefined;
      }
    } else if (token?.kind === 'name') return this.declares(tokens, at, frame) || this.isBound(tokens, at);
    return false;
  }

  private declares(tokens: readonly Token[], at: number, frame: Frame | undefined): boolean {
    const before = tokens[skipSpace(tokens, at - 1, -1)]?.kind;
    const isLone =
      (before === 'open' || before === 'comma') && tokens[skipSpace(tokens, at + 1, 1)]?.kind === 'comma';
    const name = tokens[at]?.text.toLowerCase();
    if (!isLone || frame === undefined || name === undefined) return false;
    if (frame.call === 'LAMBDA') frame.names.add(name);
    else if (frame.call === 'LET' && frame.argument % 2 === 0) frame.pending = name;
    else return false;
    return true;
  }

  private isBound(tokens: readonly Token[], at: number): boolean {
    if (tokens[at - 1]?.text === '!' || tokens[at + 1]?.text === '!' || tokens[at + 1]?.kind === 'bracket')
      return false;
    const name = tokens[at]?.text.toLowerCase() ?? '';
    return this.frames.some((frame) => frame.names.has(name));
  }
}

import { toNumber, toText } from '../coerce';
import { ArrayValue, Keep, raise, Reference, type Scalar, type Value } from '../values';
import { CellError } from '../../cells/value';
import { single } from './numbersIn';
import { type Context, inContext, plain, type SheetFunction } from './spec';
import { codeOf, charOf } from './windows1252';
import { hasWildcards, wildcard } from './wildcards';

/** The most characters that a cell holds. */
export const MOST_CHARACTERS = 32_767;

export const bounded = (text: string): string => (text.length > MOST_CHARACTERS ? raise('#VALUE!') : text);

const countOf = (value: number): number => (value < 0 ? raise('#VALUE!') : Math.trunc(value));

function replaceAt(text: string, from: number, count: number, by: string): string {
  if (from < 1 || count < 0) return raise('#VALUE!');
  const start = Math.trunc(from) - 1;
  return bounded(text.slice(0, start) + by + text.slice(start + Math.trunc(count)));
}

function substitute(text: string, old: string, by: string, occurrence: number | undefined): string {
  if (old === '') return text;
  if (occurrence === undefined) return bounded(text.replaceAll(old, () => by));
  const wanted = Math.trunc(occurrence);
  if (wanted < 1) return raise('#VALUE!');
  let at = -1;
  for (let i = 0; i < wanted; i++) {
    at = text.indexOf(old, i === 0 ? 0 : at + old.length);
    if (at < 0) return text;
  }
  return bounded(text.slice(0, at) + by + text.slice(at + old.length));
}

/** The place, counted from 1, from which to look; raises `#VALUE!` beyond the text. */
const startIn = (text: string, from: number): number => {
  const start = Math.trunc(from) - 1;
  return start < 0 || start > text.length ? raise('#VALUE!') : start;
};
const foundAt = (index: number): number => (index < 0 ? raise('#VALUE!') : index + 1);

function search(wanted: string, text: string, from: number): number {
  const start = startIn(text, from);
  return foundAt(
    hasWildcards(wanted)
      ? wildcard(wanted).find(text, start)
      : text.toLowerCase().indexOf(wanted.toLowerCase(), start),
  );
}

const proper = (text: string): string =>
  text.toLowerCase().replace(/\p{L}[\p{L}\p{M}]*/gu, (word) => {
    const first = String.fromCodePoint(word.codePointAt(0) ?? 0);
    return first.toUpperCase() + word.slice(first.length);
  });

/** Characters that only steer a printer. */
// eslint-disable-next-line no-control-regex -- they are what CLEAN removes
const CONTROLS = /[\u0000-\u001f]/g;

function unicodeOf(text: string): number {
  const code = text.codePointAt(0) ?? raise('#VALUE!');
  return code >= 0xd800 && code <= 0xdfff ? raise('#N/A') : code;
}

function unichar(value: number): string {
  const code = Math.trunc(value);
  if (code < 1 || code > 0x10ffff) return raise('#VALUE!');
  return code >= 0xd800 && code <= 0xdfff ? raise('#N/A') : String.fromCodePoint(code);
}

/** Texts of all cells of the arguments, in order. */
function* textsOf(context: Context, args: readonly Value[]): Generator<string> {
  for (const arg of args) {
    if (arg instanceof Reference || arg instanceof ArrayValue) {
      for (const value of storedOf(context, arg)) yield toText(value);
    } else yield toText(single(context, arg));
  }
}

/** The cells of every area; blanks below the used part are of no matter to texts. */
function storedOf(context: Context, value: Reference | ArrayValue): readonly Scalar[] {
  if (value instanceof ArrayValue || value.areas.length === 1) return context.array(value).stored;
  return value.areas.flatMap((area) => context.array(new Reference([area])).stored);
}

function concatenate(texts: Iterable<string>): string {
  let all = '';
  for (const text of texts) all = bounded(all + text);
  return all;
}

function joined(context: Context, delimiter: Value, ignoresEmpty: boolean, args: readonly Value[]): string {
  const delimiters = [...textsOf(context, [delimiter])];
  let all = '';
  let count = 0;
  for (const text of textsOf(context, args)) {
    if (ignoresEmpty && text === '') continue;
    const between = count === 0 ? '' : (delimiters[(count - 1) % delimiters.length] ?? '');
    all = bounded(all + between + text);
    count++;
  }
  return all;
}

/** Value as it would stand in a formula (strict) or in a cell. */
function written(value: Scalar, isStrict: boolean): string {
  if (value instanceof CellError) return value.code;
  return isStrict && typeof value === 'string' ? `"${value.replaceAll('"', '""')}"` : toText(value);
}
const strictness = (format: number): boolean => {
  const mode = Math.trunc(format);
  return mode === 0 || mode === 1 ? mode === 1 : raise('#VALUE!');
};

function arrayText(array: ArrayValue, isStrict: boolean): string {
  const cells = array.dense().map((value) => written(value, isStrict));
  if (!isStrict) return bounded(cells.join(', '));
  const rows = Array.from({ length: array.rows }, (_, row) =>
    cells.slice(row * array.columns, (row + 1) * array.columns).join(','),
  );
  return bounded(`{${rows.join(';')}}`);
}

/** What the first cell holds, where the kind fits. */
const firstScalar = (context: Context, value: Value): Scalar =>
  value instanceof Reference
    ? context.array(new Reference([value.areas[0] ?? raise('#REF!')])).at(0, 0)
    : value instanceof ArrayValue
      ? value.at(0, 0)
      : single(context, value);

/** A text whose first character has the same number on every system. */
function counted({ workbook }: Context, text: string): string {
  if (workbook.isFromMacintosh && text.charCodeAt(0) > 127)
    throw new Keep(
      'The workbook was saved on a Macintosh, where CHAR and CODE go by another table above 127; UNICHAR and UNICODE are the same everywhere.',
    );
  return text;
}

const characters = [
  plain('LEN', 't', (text) => text.length),
  plain('LEFT', 'tn?', (text, count = 1) => text.slice(0, countOf(count))),
  plain('RIGHT', 'tn?', (text, count = 1) => {
    const length = countOf(count);
    return length === 0 ? '' : text.slice(-length);
  }),
  plain('MID', 'tnn', (text, from, count) => {
    if (from < 1 || count < 0) return raise('#VALUE!');
    const start = Math.trunc(from) - 1;
    return text.slice(start, start + Math.trunc(count));
  }),
  plain('REPLACE', 'tnnt', replaceAt),
  plain('FIND', 'ttn?', (wanted, text, from = 1) => foundAt(text.indexOf(wanted, startIn(text, from)))),
  plain('SEARCH', 'ttn?', (wanted, text, from = 1) => search(wanted, text, from)),
];

/** They count bytes where the spreadsheet's language writes two for a character; ASCII has one a character in every language. */
const ofBytes = characters.map((one): SheetFunction => ({
  ...one,
  name: `${one.name}B`,
  call: (context, args) => {
    // eslint-disable-next-line no-control-regex
    if (args.some((arg) => typeof arg === 'string' && /[^\x00-\x7F]/.test(arg)))
      throw new Keep(
        `${one.name}B counts by the language of the spreadsheet; ${one.name} counts characters.`,
      );
    return one.call(context, args);
  },
}));

export const texts = [
  ...characters,
  ...ofBytes,
  plain('UPPER', 't', (text) => text.toUpperCase()),
  plain('LOWER', 't', (text) => text.toLowerCase()),
  plain('PROPER', 't', proper),
  plain('TRIM', 't', (text) => text.replace(/^ +| +$/g, '').replace(/ {2,}/g, ' ')),
  plain('CLEAN', 't', (text) => text.replace(CONTROLS, '')),
  inContext('CHAR', 'n', (context, code) => {
    const character = charOf(Math.trunc(code)) ?? raise('#VALUE!');
    return counted(context, character);
  }),
  inContext('CODE', 't', (context, text) =>
    text === '' ? raise('#VALUE!') : codeOf(counted(context, text)),
  ),
  plain('UNICHAR', 'n', unichar),
  plain('UNICODE', 't', unicodeOf),
  plain('EXACT', 'tt', (a, b) => a === b),
  plain('REPT', 'tn', (text, times) => {
    const count = countOf(times);
    return text.length * count > MOST_CHARACTERS ? raise('#VALUE!') : text.repeat(count);
  }),
  plain('SUBSTITUTE', 'tttn?', substitute),
  plain('CONCATENATE', '(t)+', (...parts) => concatenate(parts)),
  inContext('CONCAT', '(r)+', (context, ...args) => concatenate(textsOf(context, args))),
  inContext('TEXTJOIN', 'rb(r)+', (context, delimiter, ignoresEmpty, ...args) =>
    joined(context, delimiter, ignoresEmpty, args),
  ),
  inContext('T', 'r', (context, value) => {
    const first = firstScalar(context, value);
    if (first instanceof CellError) return first;
    return typeof first === 'string' ? first : '';
  }),
  inContext('N', 'r', (context, value) => {
    const first = firstScalar(context, value);
    if (first instanceof CellError) return first;
    return typeof first === 'string' || first === null ? 0 : toNumber(first);
  }),
  plain('VALUETOTEXT', 'vn?', (value, format = 0) => written(value, strictness(format))),
  plain('ARRAYTOTEXT', 'an?', (array, format = 0) => arrayText(array, strictness(format))),
  plain('ENCODEURL', 't', (text) =>
    encodeURIComponent(text).replace(
      /[!'()*]/g,
      (char) => `%${char.charCodeAt(0).toString(16).toUpperCase()}`,
    ),
  ),
];

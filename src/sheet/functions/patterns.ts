/**
 * Functions of regular expressions. Spreadsheets take the dialect of PCRE2; what the browser's own expressions read
 * otherwise, or might take for ever to search, is kept.
 */
import { ArrayValue, ERRORS, Keep, raise, type Value } from '../values';
import { plain } from './spec';
import { bounded } from './texts';

/** A repetition within a repetition may try every way to part a text between them. */
const NESTED = /\((?:[^()\\]|\\.)*(?:[+*]|\{\d*,?\d*\})(?:[^()\\]|\\.)*\)(?:[+*]|\{\d+,)/;
const LONGEST = 4096;

function expression(pattern: string, text: string, ignoresCase: number, flags = ''): RegExp {
  if (ignoresCase !== 0 && ignoresCase !== 1) return raise('#VALUE!');
  if (NESTED.test(pattern) || text.length > LONGEST)
    throw new Keep('a regular expression that may not come to an end');
  try {
    return new RegExp(pattern, `u${flags}${ignoresCase === 1 ? 'i' : ''}`);
  } catch {
    throw new Keep('a regular expression of another dialect');
  }
}

function extract(text: string, pattern: string, mode: number, ignoresCase: number): Value {
  if (mode === 1) {
    const all = [...text.matchAll(expression(pattern, text, ignoresCase, 'g'))];
    return all.length === 0 ? ERRORS['#N/A'] : ArrayValue.of(all.map(([found]) => [found]));
  }
  const found = expression(pattern, text, ignoresCase).exec(text);
  if (found === null) return ERRORS['#N/A'];
  if (mode === 0) return found[0];
  if (mode !== 2) return raise('#VALUE!');
  return found.length === 1 ? raise('#N/A') : ArrayValue.of([found.slice(1).map((group) => group)]);
}

/** The nth match from the left, from the right below zero, all for 0. */
function replaced(
  text: string,
  pattern: string,
  by: string,
  occurrence: number,
  ignoresCase: number,
): string {
  const form = expression(pattern, text, ignoresCase, 'g');
  const fill = (found: RegExpMatchArray): string =>
    by.replace(
      /\$(?:(\d{1,2})|\{(\d{1,2})\})/g,
      (_, bare?: string, braced?: string) => found[Number(bare ?? braced)] ?? '',
    );
  const all = [...text.matchAll(form)];
  const wanted = Math.trunc(occurrence);
  const chosen = wanted === 0 ? undefined : wanted > 0 ? wanted - 1 : all.length + wanted;
  let result = '';
  let at = 0;
  all.forEach((found, i) => {
    if (chosen !== undefined && i !== chosen) return;
    result += text.slice(at, found.index) + fill(found);
    at = found.index + found[0].length;
  });
  return bounded(result + text.slice(at));
}

export const patterns = [
  plain('REGEXTEST', 'ttn?', (text, pattern, ignoresCase = 0) =>
    expression(pattern, text, ignoresCase).test(text),
  ),
  plain('REGEXEXTRACT', 'ttn?n?', (text, pattern, mode = 0, ignoresCase = 0) =>
    extract(text, pattern, Math.trunc(mode), ignoresCase),
  ),
  plain('REGEXREPLACE', 'tttn?n?', (text, pattern, by, occurrence = 0, ignoresCase = 0) =>
    replaced(text, pattern, by, occurrence, ignoresCase),
  ),
];

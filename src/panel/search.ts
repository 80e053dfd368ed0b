import type { WorksheetFunction } from '../call/worksheetFunction';

/**
 * The functions that a search means, best first: every word must occur in the name, the family, the summary or
 * an argument's name. Without a word, all of them in the order given.
 */
export function searchFunctions(
  functions: readonly WorksheetFunction[],
  text: string,
): readonly WorksheetFunction[] {
  const words = text
    .toLowerCase()
    .replace(/^=?(mold\.)?/, '')
    .split(/[\s(),]+/)
    .filter((word) => word !== '');
  if (words.length === 0) return functions;
  return functions
    .map((fn, place) => ({ fn, place, rank: Math.max(...words.map((word) => rankOf(fn, word))) }))
    .filter(({ rank }) => rank < NOWHERE)
    .sort((a, b) => a.rank - b.rank || a.place - b.place)
    .map(({ fn }) => fn);
}

const NOWHERE = 5;

function rankOf(fn: WorksheetFunction, word: string): number {
  const id = fn.id.toLowerCase();
  if (id.startsWith(word)) return 0;
  if (id.split('.').some((part) => part.startsWith(word))) return 1;
  if (id.includes(word)) return 2;
  if (startsAWord(`${fn.summary} ${fn.family}`, word)) return 3;
  return startsAWord(fn.parameters.map(({ name }) => name).join(' '), word) ? 4 : NOWHERE;
}

function startsAWord(text: string, start: string): boolean {
  return text
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .some((word) => word.startsWith(start));
}

/** Verdicts as they stand in cells: in the words of the one scale, with its mark before them. */
import type { CellValue } from '../cells/value';
import type { Verdict } from '../core/strength';

const WORDS: readonly Verdict[] = ['does not hold', 'little to spare', 'holds', 'not known'];
const MARK = /^[✓!✗?]\s*/;

/** The verdict that a cell tells; undefined where it tells none. */
export function verdictIn(value: CellValue): Verdict | undefined {
  if (typeof value !== 'string') return undefined;
  const text = value.replace(MARK, '').toLowerCase();
  return WORDS.find(
    (word) => text === word || (text.startsWith(word) && /^\W/.test(text.slice(word.length))),
  );
}

import { american, foldName, plainSigns } from '../core/names';
import { type Named, AmbiguousName, nameFinder, lazily } from './names';
import { refuseComma } from './sizeText';

/**
 * Reads the names of materials as people write them: words in any order, with words beside them that say nothing more.
 * `T6 6061`, `AISI 4140 steel` and `6061 aluminium` are names of rows; `6061-T4` is none, as a row of that temper is not there.
 */
export interface SpelledMaterial extends Named {
  /** Words that may stand beside its name without changing what it means, such as `steel` or `AISI`. */
  readonly beside: readonly string[];
}

/** The words of a name in American spelling; a hyphen, blank, bracket or stroke parts them. */
const wordsOf = (text: string): readonly string[] =>
  american(plainSigns(text).toLowerCase())
    .split(/[\s\-_()/,]+/)
    .filter((word) => word !== '');

const inAnyOrder = (words: readonly string[]): string => [...words].sort().join(' ');

interface Spelling<T> {
  readonly row: T;
  readonly words: string;
}

/** Finds a material by a name, whatever the order of its words. Throws `UnknownName` or `AmbiguousName`. */
export const materialFinder = <T extends SpelledMaterial>(
  what: string,
  rows: readonly T[],
): ((given: string) => T) => lazily(() => indexedByWords(what, rows));

function indexedByWords<T extends SpelledMaterial>(what: string, rows: readonly T[]): (given: string) => T {
  const exact = nameFinder(what, rows);
  const spellings: readonly Spelling<T>[] = rows.flatMap((row) =>
    [row.name, ...(row.aliases ?? [])].map((name) => ({ row, words: inAnyOrder(wordsOf(name)) })),
  );
  const names = new Set(rows.flatMap((row) => [row.name, ...(row.aliases ?? [])]).map(foldName));

  const byWords = (given: string): readonly T[] => {
    const words = wordsOf(given);
    const all = inAnyOrder(words);
    const whole = spellings.filter((spelling) => spelling.words === all);
    const found =
      whole.length > 0
        ? whole
        : spellings.filter(({ row, words: wanted }) => {
            const left = words.filter((word) => !row.beside.includes(word));
            return left.length > 0 && left.length < words.length && inAnyOrder(left) === wanted;
          });
    return [...new Set(found.map(({ row }) => row))];
  };

  return (given) => {
    if (names.has(foldName(given))) return exact(given);
    const found = byWords(given);
    const [only] = found;
    if (only && found.length === 1) return only;
    if (found.length > 1)
      throw new AmbiguousName(
        what,
        given,
        found.map((row) => row.name),
      );
    refuseComma(given);
    return exact(given);
  };
}

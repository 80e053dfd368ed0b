import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Refusal } from '../../src/core/refusal';
import { findMetal } from '../../src/tables/metals';
import { AmbiguousName, UnknownName } from '../../src/tables/names';
import { findResin } from '../../src/tables/resins';
import '../support/chance';
import { slips } from './slips';
import { METAL_SPELLINGS, RESIN_SPELLINGS } from './spellings';

type Spellings = Readonly<Record<string, readonly string[]>>;
const pairs = (table: Spellings): [string, string][] =>
  Object.entries(table).flatMap(([name, ways]) => ways.map((way): [string, string] => [way, name]));

const readOrNothing = (
  find: (given: string) => { readonly name: string },
  word: string,
): string | undefined => {
  try {
    return find(word).name;
  } catch (error) {
    if (error instanceof Refusal) return undefined;
    throw error;
  }
};

/** Letters and figures alone, in their order: what stays of a word when nothing but signs between them changes. */
const bare = (word: string): string => word.toLowerCase().replace(/[^a-z0-9%.]/g, '');
/** Words beside a name that say no more. */
const BESIDE =
  /\b(natural|unfilled|virgin|resin|plastic|neat|steel|tool|mou?ld|aisi|sae|alloy|plate|bar|alumini?um|alu?|aa|en|aw|carbon|stainless|ss)\b/gi;
/** The same in any order of words. */
const bag = (word: string): string =>
  word
    .toLowerCase()
    .split(/[^a-z0-9%.]+/)
    .filter((one) => one !== '')
    .sort()
    .join(' ');

describe.each([
  ['metal', METAL_SPELLINGS, findMetal, 21],
  ['resin', RESIN_SPELLINGS, findResin, 22],
] as const)('a %s', (_what, table, find, seed) => {
  it.each(pairs(table))('%s is %s', (given, name) => {
    expect(find(given).name).toBe(name);
  });

  it('is read by a slip of the hand as nothing that the slip does not say, in 6,000 slips', () => {
    const known = new Map<string, Set<string>>();
    for (const [way, name] of pairs(table))
      for (const key of [bare(way), bag(way)]) known.set(key, (known.get(key) ?? new Set()).add(name));
    let read = 0;
    fc.assert(
      fc.property(
        fc.constantFrom(...pairs(table)).chain(([way, name]) => slips(way).map((word) => ({ word, name }))),
        ({ word, name }) => {
          const found = readOrNothing(find, word);
          if (found === undefined || found === name) return;
          read++;
          // Another row: only where the slip made one of its own names, as the table beside has it or its own name.
          const written = [word, word.replace(BESIDE, ' ')].flatMap((one) => [
            ...(known.get(bare(one)) ?? []),
            ...(known.get(bag(one)) ?? []),
          ]);
          expect(
            [...written, ...(bare(find(word).name) === bare(word) ? [found] : [])],
            `${word} was read as ${found}`,
          ).toContain(found);
        },
      ),
      { numRuns: 6000, seed },
    );
    expect(read).toBeLessThan(300);
  });
});

describe('a name that is none', () => {
  it.each(['6061-T4', '7075-T73', 'H14', '4130', 'P200', 'PA12', 'PPS', 'PA66-GF50', 'PBT-GF20'])(
    '%s is refused with the nearest three',
    (word) => {
      const find = /^P[ABP]/.test(word) ? findResin : findMetal;
      expect(() => find(word)).toThrow(UnknownName);
      try {
        find(word);
      } catch (error) {
        expect((error as UnknownName).nearest).toHaveLength(3);
      }
    },
  );

  it.each([
    ['aluminium', findMetal, '6061-T6'],
    ['alu', findMetal, '7075-T6'],
    ['stainless steel', findMetal, '304'],
    ['tool steel', findMetal, 'A2'],
    ['nylon', findResin, 'PA66'],
    ['glass filled nylon', findResin, 'PA6-GF30'],
    ['polyethylene', findResin, 'LDPE'],
    ['polyester', findResin, 'PET'],
  ] as const)('%s is a family, refused with its members', (word, find, member) => {
    expect(() => find(word)).toThrow(AmbiguousName);
    expect(() => find(word)).toThrow(member);
  });

  it('names the comma of a number', () => {
    expect(() => findResin('0,065')).toThrow('comma');
    expect(() => findMetal('205,5 GPa')).toThrow('comma');
  });
});

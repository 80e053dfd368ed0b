import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Refusal } from '../../src/core/refusal';
import { findDrill } from '../../src/tables/drillName';
import type { Drill } from '../../src/tables/drills';
import { readClass, readFit } from '../../src/tables/fitName';
import { AmbiguousName } from '../../src/tables/names';
import { findThread } from '../../src/tables/threadName';
import type { Thread } from '../../src/tables/threads';
import '../support/chance';
import { slips as slipsOf } from './slips';
import {
  CLASS_SPELLINGS,
  DRILL_SPELLINGS,
  FIT_SPELLINGS,
  THREAD_CHOICES,
  THREAD_SPELLINGS,
} from './spellings';

const pairs = (table: Readonly<Record<string, readonly string[]>>): [string, string][] =>
  Object.entries(table).flatMap(([name, ways]) => ways.map((way): [string, string] => [way, name]));

const choicesOf = (given: string): readonly string[] => {
  try {
    return [findThread(given).name];
  } catch (error) {
    if (error instanceof AmbiguousName) return error.choices;
    throw error;
  }
};

describe('a thread', () => {
  it.each(pairs(THREAD_SPELLINGS))('%s is %s', (given, name) => {
    expect(findThread(given).name).toBe(name);
  });

  it.each(Object.entries(THREAD_CHOICES))('%s is refused with every reading', (given, choices) => {
    expect(choicesOf(given)).toEqual(choices);
  });

  it.each([
    ['1/4 NPT', 'TAP.PIPE'],
    ['1/8-27 NPT', 'TAP.PIPE'],
    ['1/4" NPTF', 'TAP.PIPE'],
    ['G1/4', 'TAP.PIPE'],
    ['G 1 1/4', 'TAP.PIPE'],
    ['Rp 1/2', 'TAP.PIPE'],
    ['1/4-18 NPT', 'TAP.PIPE'],
    ['1/2 BSPP', 'TAP.PIPE'],
    ['1/4-20 STI', 'wire insert'],
    ['3/8 BSW', 'another form'],
    ['Tr20x4', 'another form'],
    ['1,25-7', 'comma'],
    ['10/32 UNC', '#10-32 UNF'],
    ['8/32"', 'nearest'],
    ['08-32', 'nearest'],
    ['10x1.5', 'M10'],
    ['M6x20', 'M6'],
    ['M6-2B', 'M6'],
    ['1/4-20 6H', '1/4-20'],
  ])('%s is refused, and the refusal says %s', (given, says) => {
    expect(() => findThread(given)).toThrow(Refusal);
    expect(() => findThread(given)).toThrow(says);
  });
});

describe('a drill', () => {
  it.each(pairs(DRILL_SPELLINGS))('%s is %s', (given, name) => {
    expect(findDrill(given).name).toBe(name);
  });

  it('written as a plain number is a diameter in the units of the call, unless it is the number of a drill', () => {
    expect(findDrill('3.3', 'mm').name).toBe('3.3 mm');
    expect(findDrill('.201', 'in').name).toBe('#7');
    expect(findDrill('Ø5', 'mm').name).toBe('5.0 mm');
    expect(findDrill('21', 'mm').name).toBe('#21');
    expect(findDrill('1/4', 'mm').name).toBe('1/4');
    expect(() => findDrill('3,3 mm')).toThrow('comma');
    expect(() => findDrill('81')).toThrow(Refusal);
    expect(() => findDrill('Ø21', 'in')).toThrow(Refusal);
  });
});

describe('a fit or a tolerance class', () => {
  it.each(pairs(FIT_SPELLINGS))('%s is %s', (given, name) => {
    const { size, hole, shaft } = readFit(given, 'mm');
    expect(`${size === undefined ? '' : `${size * 1000} `}${hole}/${shaft}`).toBe(name);
  });

  it.each(pairs(CLASS_SPELLINGS))('%s is %s', (given, name) => {
    const { size, name: found } = readClass(given, 'mm');
    expect(`${size === undefined ? '' : `${size * 1000} `}${found}`).toBe(name);
  });

  it.each(['h7/g6', 'g6/H7', 'H7/G6', '12,5 H7/g6', 'H7/g6/h5', 'H/g', '25'])('%s is refused', (given) => {
    expect(() => readFit(given)).toThrow(Refusal);
  });

  it('keeps the size in its own unit, or in that of the call', () => {
    expect(readClass('1 in H7', 'mm').size).toBeCloseTo(0.0254, 12);
    expect(readClass('1 H7', 'in').size).toBeCloseTo(0.0254, 12);
    expect(readClass('1/2" g6', 'mm').size).toBeCloseTo(0.0127, 12);
  });
});

const slips = (table: Readonly<Record<string, readonly string[]>>): fc.Arbitrary<string> =>
  fc.constantFrom(...Object.values(table).flat()).chain(slipsOf);

const readOrNothing = <T>(read: () => T): T | undefined => {
  try {
    return read();
  } catch (error) {
    if (error instanceof Refusal) return undefined;
    throw error;
  }
};

/** Numbers of a word in its order, fractions as they stand: what a person sees without knowing any rule. */
const numbersIn = (word: string): string[] =>
  word
    .replace(/no\./i, ' ')
    .replace(/½/g, ' 1/2 ')
    .replace(/¼/g, ' 1/4 ')
    .replace(/⁄/g, '/')
    .replace(/\s+/g, ' ')
    .match(/\d+ ?\/ ?\d+|\d*[.,]\d+|\d+\.?/g)
    ?.map((one) => one.replace(/ /g, '')) ?? [];
const valueOf = (number: string): number => {
  const [over = NaN, under = 1] = number.replace(',', '.').split('/').map(Number);
  return over / under;
};

/** Whether the numbers of a word are those of a thread: its size as number, fraction, mixed or decimal, then its count. */
function tellsThread(word: string, thread: Thread): boolean {
  const isMetric = /^[Øø⌀]?\s*(ISO\s+)?M/i.test(word);
  if (isMetric !== (thread.system === 'ISO')) return false;
  const bare = isMetric
    ? word.replace(/[-–\s]+\d[EFGH](\d[EFGH])?(\/\d[EFGH](\d[EFGH])?)?(?=$|[\s-–])/i, '')
    : word.replace(/([-–\s]+|(?<=[A-Z]))[123][AB](?=$|[\s-–])/i, '');
  const numbers = numbersIn(isMetric ? bare.replace(/[/⁄]/g, ' ') : bare);
  const count = isMetric ? thread.printed.pitch : thread.tpi;
  const numbered = /^#(\d+)/.exec(thread.name)?.[1];
  if (numbered !== undefined && numbers.length === 1 && numbers[0] === `${numbered}/${count}`) return true;
  const values = numbers.map(valueOf);
  const size = (from: readonly number[]): boolean =>
    (from.length === 1 && Math.abs((from[0] ?? NaN) - thread.printed.major) < 6e-4) ||
    (from.length === 1 && numbered !== undefined && from[0] === Number(numbered)) ||
    (from.length === 2 &&
      (from[0] ?? NaN) % 1 === 0 &&
      (from[0] ?? 0) + (from[1] ?? NaN) === thread.printed.major);
  const named = /N[CF]|NEF|coarse|fine|MF/i.test(word) || (isMetric && thread.series === 'coarse');
  return (values.at(-1) === count && size(values.slice(0, -1))) || (named && size(values));
}

/** Whether the numbers of a word are those of a drill. */
function tellsDrill(word: string, drill: Drill): boolean {
  const numbers = numbersIn(word);
  if (drill.series === 'letter' && numbers.length === 0)
    return new RegExp(`(^|[^a-z])${drill.name}([^a-z]|$)`, 'i').test(word);
  if (drill.series === 'number' && numbers.length === 1 && Number(numbers[0]) === Number(drill.name.slice(1)))
    return !/mm|cm|in(?!g)|["”″Øø⌀]/i.test(word.replace(/wire|in?$/gi, ''));
  const values = numbers.map(valueOf);
  const scale = /mm/i.test(word) ? 0.001 : /cm/i.test(word) ? 0.01 : 0.0254;
  const whole = values.length === 2 ? (values[0] ?? NaN) % 1 : 0;
  return (
    values.length <= 2 &&
    whole === 0 &&
    Math.abs(values.reduce((sum, one) => sum + one, 0) * scale - drill.diameter) < 1.3e-6
  );
}

describe('a slip of the hand is refused or changes nothing but what it says', () => {
  it('in 6,000 threads', () => {
    let read = 0;
    fc.assert(
      fc.property(slips(THREAD_SPELLINGS), (word) => {
        const thread = readOrNothing(() => findThread(word));
        if (!thread) return;
        read++;
        expect(tellsThread(word, thread), `${word} was read as ${thread.name}`).toBe(true);
      }),
      { numRuns: 6000, seed: 1 },
    );
    // Many slips are harmless (a blank more); were none read, nothing would have been shown.
    expect(read).toBeGreaterThan(500);
  });

  it('in 3,000 drills', () => {
    let read = 0;
    fc.assert(
      fc.property(slips(DRILL_SPELLINGS), (word) => {
        const drill = readOrNothing(() => findDrill(word));
        if (!drill) return;
        read++;
        expect(tellsDrill(word, drill), `${word} was read as ${drill.name}`).toBe(true);
      }),
      { numRuns: 3000, seed: 2 },
    );
    expect(read).toBeGreaterThan(300);
  });

  it('in 3,000 fits and classes', () => {
    let read = 0;
    const closed = (word: string): string => word.replace(/[\s/–—⁄-]/g, '');
    fc.assert(
      fc.property(slips({ ...FIT_SPELLINGS, ...CLASS_SPELLINGS }), (word) => {
        const found = readOrNothing(() => readFit(word)) ?? readOrNothing(() => readClass(word));
        if (!found) return;
        read++;
        const classes = 'hole' in found ? found.hole + found.shaft : found.name;
        expect(closed(word).endsWith(classes), `${word} was read as ${classes}`).toBe(true);
        const before = numbersIn(word.slice(0, word.lastIndexOf(classes.charAt(0)))).map(valueOf);
        const numbers =
          'hole' in found ? numbersIn(word.slice(0, word.search(/[A-Z]/))).map(valueOf) : before;
        const scale = /mm/.test(word) || !/in|["″”]/.test(word) ? 0.001 : 0.0254;
        expect(numbers.length, word).toBeLessThanOrEqual(2);
        expect(
          numbers.length === 0 ? 0 : numbers.reduce((sum, one) => sum + one, 0) * scale,
          word,
        ).toBeCloseTo(found.size ?? 0, 9);
      }),
      { numRuns: 3000, seed: 3 },
    );
    expect(read).toBeGreaterThan(300);
  });
});

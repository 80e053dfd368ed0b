import { beforeEach, describe, expect, it } from 'vitest';
import { CellError } from '../../src/cells/value';
import { Journal, type TypedCell } from '../../src/page/journal';

/** As the browser's: its keys are its own properties. */
const storage = (room: number): Storage => {
  const held: Record<string, string> = {};
  const methods = {
    getItem: (key: string) => held[key] ?? null,
    setItem: (key: string, value: string) => {
      if (Object.values({ ...held, [key]: value }).join('').length > room)
        throw new Error('QuotaExceededError');
      held[key] = value;
    },
    removeItem: (key: string) => Reflect.deleteProperty(held, key),
  };
  return new Proxy(held, {
    get: (_, key) => methods[key as keyof typeof methods],
  }) as unknown as Storage;
};

const cell = (value: TypedCell['value']): TypedCell => ({ sheet: 'Seat', row: 1, column: 1, value });

let journal: Journal;
beforeEach(() => {
  journal = new Journal(storage(10_000));
});

describe('the journal of a draft', () => {
  it('gives what was typed after the draft was kept, the oldest first', () => {
    for (let number = 1; number <= 12; number++) journal.add('a', number, { typed: [cell(number)] });
    expect(journal.newest('a')).toBe(12);
    expect(journal.since('a', 9)).toEqual({ typed: [cell(10), cell(11), cell(12)], unsaved: true });
  });

  it('says that a file has it once it was saved, until more is typed', () => {
    journal.add('a', 1, { typed: [cell(1)] });
    journal.add('a', 2, { savedToFile: true });
    expect(journal.since('a', 0)).toEqual({ typed: [cell(1)], unsaved: false });
    journal.add('a', 3, { typed: [cell(2)] });
    expect(journal.since('a', 0).unsaved).toBe(true);
  });

  it('says nothing of a draft that has no notes', () => {
    journal.add('ab', 1, { typed: [cell(1)] });
    expect(journal.since('a', 0)).toEqual({ typed: [] });
    expect(journal.newest('a')).toBe(0);
  });

  it('gives a formula and an error back as they were', () => {
    const typed = [{ ...cell(0), formula: 'B1*2.50' }, cell(new CellError('#N/A', 'no size'))];
    journal.add('a', 1, { typed });
    const [formula, error] = journal.since('a', 0).typed;
    expect(formula).toEqual(typed[0]);
    expect(error?.value).toBeInstanceOf(CellError);
    expect(error?.value).toEqual(typed[1]?.value);
  });

  it('forgets what the draft has, and no more', () => {
    for (const number of [1, 2, 3]) journal.add('a', number, { typed: [cell(number)] });
    journal.add('b', 1, { typed: [cell('b')] });
    journal.forget('a', 2);
    expect(journal.since('a', 0).typed).toEqual([cell(3)]);
    journal.forget('a');
    expect(journal.since('a', 0).typed).toEqual([]);
    expect(journal.since('b', 0).typed).toEqual([cell('b')]);
  });

  it('tells when there is no room, and keeps what it had', () => {
    journal.add('a', 1, { typed: [cell(1)] });
    expect(journal.add('a', 2, { typed: [cell('x'.repeat(20_000))] })).toBe(false);
    expect(journal.since('a', 0).typed).toEqual([cell(1)]);
  });
});

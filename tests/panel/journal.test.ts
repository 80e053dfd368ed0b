import { beforeEach, expect, it, vi } from 'vitest';
import { journalOf } from '../../src/panel/whatif/journal';

beforeEach(() => {
  const kept = new Map<string, string>();
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => kept.set(key, text),
    removeItem: (key: string) => kept.delete(key),
  });
});

const held = [{ cell: { sheet: 'Seat', row: 0, column: 1 }, content: 100 }];

it('a workbook is offered what its own torn-off run held, and no other', () => {
  journalOf('C:\\seat.xlsx').note(held);
  expect(journalOf('C:\\seat.xlsx').tornOff()).toEqual(held);
  expect(journalOf('C:\\press.xlsx').tornOff()).toBeUndefined();
});

it('a run that has put everything back leaves nothing', () => {
  const journal = journalOf('C:\\seat.xlsx');
  journal.note(held);
  journal.clear();
  expect(journal.tornOff()).toBeUndefined();
});

import { expect, it } from 'vitest';
import { saidOnce } from '../../src/panel/share/checkDesk';

it('says a caution once for all the cells that it is about', () => {
  const found = ['D4', 'D9'].map((cell) => ({ sheet: 'Seat', cell, says: 'Self-locking' }));
  expect(saidOnce([...found, { sheet: 'Seat', cell: 'D5', says: 'Hot' }])).toEqual([
    { says: 'Self-locking', cells: 'Seat!D4, Seat!D9' },
    { says: 'Hot', cells: 'Seat!D5' },
  ]);
});

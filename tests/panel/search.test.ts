import { describe, expect, it } from 'vitest';
import type { WorksheetFunction } from '../../src/call/worksheetFunction';
import { searchFunctions } from '../../src/panel/search';

const fn = (id: string, summary: string, parameters: string[] = []): WorksheetFunction => ({
  id,
  family: id.slice(0, id.indexOf('.')),
  summary,
  parameters: parameters.map((name) => ({ name, says: '', optional: false, repeating: false })),
  call: () => [[0]],
});
const functions = [
  fn('SEAT.FORCE', 'Summed normal force between a tapered insert and its seat.', ['push', 'draft']),
  fn('SEAT.SINK', 'Axial sink of a round insert.', ['push']),
  fn('SPRING.FORCE', 'Force of a spring at a length.', ['rate']),
  fn('SPRING.PRELOAD', 'Force at the installed length.'),
];
const found = (text: string) => searchFunctions(functions, text).map(({ id }) => id);

describe('searching the functions', () => {
  it('lists all of them in their order without a word', () => {
    expect(found('  ')).toEqual(functions.map(({ id }) => id));
  });

  it('puts a name before a summary that has the word', () => {
    expect(found('force')).toEqual(['SEAT.FORCE', 'SPRING.FORCE', 'SPRING.PRELOAD']);
  });

  it('takes what a person copies from a cell', () => {
    expect(found('=MOLD.SEAT.SINK(')).toEqual(['SEAT.SINK']);
  });

  it('needs every word, wherever it stands', () => {
    expect(found('spring installed')).toEqual(['SPRING.PRELOAD']);
    expect(found('spring tapered')).toEqual([]);
  });

  it('finds a function by an argument', () => {
    expect(found('draft')).toEqual(['SEAT.FORCE']);
  });
});

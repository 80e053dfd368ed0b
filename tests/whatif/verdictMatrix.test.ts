import { describe, expect, it } from 'vitest';
import { matrixOf, verdictOf } from '../../src/whatif/verdictMatrix';
import type { Outcome } from '../../src/whatif/run';

const heading = (label: string) => ({
  label,
  unit: '',
  cell: { sheet: 'Seat', row: 0, column: 0 },
});
/** Force is draft times friction; it holds below 10. */
const outcome = (drafts: readonly number[], frictions: readonly number[], found = Infinity): Outcome => ({
  inputs: [drafts, frictions].map((values, at) => ({ ...heading(String(at)), now: 1, values })),
  results: [heading('Force'), heading('Seat')],
  rows: drafts
    .flatMap((draft) => frictions.map((friction) => [draft, friction] as const))
    .slice(0, found)
    .map(([draft, friction]) => ({
      inputs: [draft, friction],
      results: [draft * friction, draft * friction < 10 ? '✓ holds' : '✗ does not hold'],
    })),
  planned: drafts.length * frictions.length,
});

describe('two inputs against each other', () => {
  it('have what each pair gives, with the verdict of the result that tells one', () => {
    const matrix = matrixOf(outcome([1, 2, 3], [4, 5]), 0);
    expect(matrix?.rows.map((row) => row.map(({ value }) => value))).toEqual([
      [4, 5],
      [8, 10],
      [12, 15],
    ]);
    expect(matrix?.rows[1]?.map(({ verdict }) => verdict)).toEqual(['holds', 'does not hold']);
    expect(verdictOf(outcome([1], [2]), 0)).toBe(1);
  });

  it('have the limit where the verdict turns, and at no edge', () => {
    const limits = matrixOf(outcome([1, 2, 3], [4, 5]), 0)?.rows.map((row) => row.map(({ limit }) => limit));
    expect(limits).toEqual([
      [
        { right: false, below: false },
        { right: false, below: true },
      ],
      [
        { right: true, below: true },
        { right: false, below: false },
      ],
      [
        { right: false, below: false },
        { right: false, below: false },
      ],
    ]);
  });

  it('have no limit where a run was stopped', () => {
    const matrix = matrixOf(outcome([1, 2, 3], [4, 5], 3), 0);
    expect(matrix?.rows[1]?.[1]).toEqual({
      value: null,
      verdict: undefined,
      limit: { right: false, below: false },
    });
    expect(matrix?.rows[1]?.[0]?.limit).toEqual({ right: false, below: false });
  });
});

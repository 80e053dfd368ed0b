/** Two inputs against each other: what each pair gives, its verdict, and where the limit runs between pairs. */
import type { CellValue } from '../cells/value';
import type { Verdict } from '../core/strength';
import type { CellInput } from '../workbook/cells';
import { verdictIn } from '../workbook/verdicts';
import type { Outcome } from './run';

export interface Pair {
  readonly value: CellValue;
  readonly verdict: Verdict | undefined;
  /** The limit runs between it and the next pair. */
  readonly limit: { readonly right: boolean; readonly below: boolean };
}

export interface Matrix {
  /** Values of the first input, from the top; of the second, from the left. */
  readonly down: readonly CellInput[];
  readonly across: readonly CellInput[];
  readonly rows: readonly (readonly Pair[])[];
}

/** Beyond it something does not hold. */
export const LIMIT: Verdict = 'does not hold';

/** Which result tells the verdict of a result: the first that does, from itself on. */
export function verdictOf({ results, rows }: Outcome, result: number): number | undefined {
  const found = results.findIndex(
    (_, at) => at >= result && rows.some((row) => verdictIn(row.results[at] ?? null) !== undefined),
  );
  return found < 0 ? undefined : found;
}

/** The matrix of a result; undefined where not just two inputs were varied. */
export function matrixOf(outcome: Outcome, result: number): Matrix | undefined {
  const { inputs, rows } = outcome;
  const [first, second] = inputs;
  if (!first || !second || inputs.length > 2) return undefined;
  const [down, across] = [first.values, second.values];
  const teller = verdictOf(outcome, result);
  const verdictAt = (row: number, column: number): Verdict | undefined =>
    teller === undefined || column >= across.length
      ? undefined
      : verdictIn(rows[row * across.length + column]?.results[teller] ?? null);
  const isLimit = (one: Verdict | undefined, other: Verdict | undefined): boolean =>
    one !== undefined && other !== undefined && (one === LIMIT) !== (other === LIMIT);
  return {
    down,
    across,
    rows: down.map((_, row) =>
      across.map((__, column): Pair => {
        const verdict = verdictAt(row, column);
        return {
          value: rows[row * across.length + column]?.results[result] ?? null,
          verdict,
          limit: {
            right: isLimit(verdict, verdictAt(row, column + 1)),
            below: isLimit(verdict, verdictAt(row + 1, column)),
          },
        };
      }),
    ),
  };
}

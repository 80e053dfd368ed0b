import { CellError, type CellValue, type Matrix } from '../../src/cells/value';

/** A formula as it is typed, and what stands in books, standards or a calculation apart. */
export interface CheckRow {
  readonly formula: string;
  readonly expected?: Expected | readonly (readonly Expected[])[];
  readonly rel_tol?: number;
  readonly abs_tol?: number;
  readonly expected_error?: string;
  readonly must_mention?: string;
  readonly topic: string;
  readonly quantity: string;
  readonly source: string;
  readonly kind: string;
}

type Expected = number | string | boolean;

/** What is wrong with an answer to a row; undefined where it agrees. */
export function disagreement(row: CheckRow, answer: Matrix): string | undefined {
  if (row.expected_error !== undefined) return notRefused(row, answer);
  const wanted = typeof row.expected === 'object' ? row.expected : [[row.expected ?? '']];
  const agree =
    wanted.length === answer.length &&
    wanted.every(
      (line, r) =>
        line.length === answer[r]?.length && line.every((one, c) => agrees(answer[r]?.[c] ?? null, one, row)),
    );
  return agree ? undefined : `${matrixText(answer)}, expected ${matrixText(wanted)}`;
}

function notRefused(
  { expected_error: code = '', must_mention: mention = '' }: CheckRow,
  answer: Matrix,
): string | undefined {
  const refused = answer.flat().find((cell) => cell instanceof CellError);
  if (refused?.code === code && refused.message.includes(mention)) return undefined;
  return `${matrixText(answer)}, expected ${code}${mention === '' ? '' : ` that mentions ${mention}`}`;
}

function agrees(value: CellValue, expected: Expected, { rel_tol = 0, abs_tol = 0 }: CheckRow): boolean {
  if (typeof expected !== 'number') return value === expected;
  return (
    typeof value === 'number' && Math.abs(value - expected) <= Math.max(rel_tol * Math.abs(expected), abs_tol)
  );
}

const matrixText = (cells: Matrix): string =>
  cells
    .map((line) =>
      line
        .map((cell) => (cell instanceof CellError ? `${cell.code} ${cell.message}` : String(cell)))
        .join(', '),
    )
    .join('; ');

import type { Source } from '../core/define';

/** One check of a function as the report and the page of help show it. */
export interface CheckLine {
  readonly id: string;
  readonly given: string;
  /** In the unit beside it, as text. */
  readonly expected: string;
  readonly ours: string;
  /** Relative, of numbers; of a zero the value itself. */
  readonly difference: number | undefined;
  readonly unit: string;
  readonly from: string;
  readonly kind: Source['kind'];
}

export const differenceText = ({ difference }: CheckLine): string =>
  difference === undefined ? 'the same text' : difference === 0 ? '0' : difference.toExponential(1);

/** Functions whose every check is worked out from the equation itself. */
export const onDerivationAlone = (lines: readonly CheckLine[]): readonly string[] => {
  const ids = [...new Set(lines.map(({ id }) => id))];
  return ids.filter((id) => lines.every((line) => line.id !== id || line.kind === 'derived'));
};

const HEADS = ['function', 'given', 'expected', 'ours', 'unit', 'difference', 'kind', 'source'] as const;

/** The numbers of the report for a spreadsheet. */
export const validationCsv = (lines: readonly CheckLine[]): string =>
  [
    HEADS,
    ...lines.map(({ id, given, expected, ours, unit, difference, kind, from }) => [
      id,
      given,
      expected,
      ours,
      unit,
      difference === undefined ? '' : String(difference),
      kind,
      from,
    ]),
  ]
    .map((row) => `${row.map((cell) => `"${cell.replaceAll('"', '""')}"`).join(',')}\r\n`)
    .join('');

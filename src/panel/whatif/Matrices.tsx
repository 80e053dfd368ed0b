import { makeStyles, mergeClasses, tokens } from '@fluentui/react-components';
import { CellError } from '../../cells/value';
import { numberText } from '../../core/format';
import type { Verdict } from '../../core/strength';
import type { Outcome } from '../../whatif/run';
import { headsOf, plainText } from '../../whatif/table';
import { LIMIT, matrixOf, type Pair } from '../../whatif/verdictMatrix';

const LIMIT_LINE = `3px solid ${tokens.colorNeutralForeground1}`;

const useStyles = makeStyles({
  frame: {
    maxHeight: '320px',
    overflow: 'auto',
    ':focus-visible': { outline: `2px solid ${tokens.colorStrokeFocus2}` },
  },
  table: { borderCollapse: 'collapse', fontSize: tokens.fontSizeBase200 },
  caption: {
    textAlign: 'left',
    paddingBottom: '4px',
    fontWeight: tokens.fontWeightSemibold,
    overflowWrap: 'anywhere',
  },
  head: { padding: '3px 8px', fontWeight: tokens.fontWeightSemibold, textAlign: 'right' },
  cell: {
    padding: '3px 8px',
    border: `1px solid ${tokens.colorNeutralStroke3}`,
    fontVariantNumeric: 'tabular-nums',
    textAlign: 'right',
    whiteSpace: 'nowrap',
  },
  right: { borderRight: LIMIT_LINE },
  below: { borderBottom: LIMIT_LINE },
  // Dark or light with the panel; the sign in the cell says the same to who does not see the color.
  fails: { backgroundColor: tokens.colorPaletteRedBackground1 },
  little: { backgroundColor: tokens.colorPaletteYellowBackground1 },
  holds: { backgroundColor: tokens.colorPaletteGreenBackground1 },
  note: { margin: '4px 0 0', color: tokens.colorNeutralForeground2, fontSize: tokens.fontSizeBase200 },
});

const SIGNS: Readonly<Record<Verdict, string>> = {
  holds: '✓',
  'little to spare': '!',
  'does not hold': '✗',
  'not known': '?',
};

/** More pairs are slow to draw; the sheet has them all. */
export const MOST_PAIRS = 2_500;

/** Two inputs against each other, a matrix for each result, colored by its verdict. */
export function Matrices({ outcome }: { readonly outcome: Outcome }) {
  if (outcome.inputs.length !== 2 || outcome.planned > MOST_PAIRS) return null;
  return outcome.results.map((_, result) => <MatrixTable key={result} outcome={outcome} result={result} />);
}

function MatrixTable({ outcome, result }: { readonly outcome: Outcome; readonly result: number }) {
  const styles = useStyles();
  const matrix = matrixOf(outcome, result);
  if (!matrix) return null;
  const heads = headsOf(outcome);
  const title = heads[2 + result] ?? '';
  const hasLimit = matrix.rows.some((row) => row.some(({ limit }) => limit.right || limit.below));
  return (
    <div className={styles.frame} role="region" aria-label={`Matrix: ${title}`} tabIndex={0}>
      <table className={styles.table}>
        <caption className={styles.caption}>
          {title}: {heads[0]} down, {heads[1]} across
        </caption>
        <thead>
          <tr>
            <td />
            {matrix.across.map((value, at) => (
              <th key={at} scope="col" className={styles.head}>
                {text(value)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {matrix.rows.map((row, at) => (
            <tr key={at}>
              <th scope="row" className={styles.head}>
                {text(matrix.down[at] ?? null)}
              </th>
              {row.map((pair, one) => (
                <PairCell key={one} pair={pair} styles={styles} />
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      {hasLimit && <p className={styles.note}>The thick line is the limit: beyond it, {LIMIT}.</p>}
    </div>
  );
}

interface PairProps {
  readonly pair: Pair;
  /** Asked for once a table: there are thousands of cells. */
  readonly styles: ReturnType<typeof useStyles>;
}

function PairCell({ pair: { value, verdict, limit }, styles }: PairProps) {
  const color = verdict === undefined ? undefined : COLORS[verdict];
  return (
    <td
      className={mergeClasses(
        styles.cell,
        color && styles[color],
        limit.right && styles.right,
        limit.below && styles.below,
      )}
      title={value instanceof CellError ? value.message : verdict}
    >
      {text(value)}
      {verdict !== undefined && typeof value !== 'string' && ` ${SIGNS[verdict]}`}
    </td>
  );
}

const COLORS = {
  'does not hold': 'fails',
  'little to spare': 'little',
  'not known': 'little',
  holds: 'holds',
} as const satisfies Record<Verdict, string>;

const text = (value: Pair['value']): string =>
  value instanceof CellError ? value.code : typeof value === 'number' ? numberText(value) : plainText(value);

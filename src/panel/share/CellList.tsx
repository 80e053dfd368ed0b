import { makeStyles, tokens } from '@fluentui/react-components';
import type { ReactNode } from 'react';
import { cellText, readCell } from '../../whatif/plan';

const useStyles = makeStyles({
  list: { listStyle: 'none', margin: 0, padding: 0 },
  line: {
    paddingBlock: '6px',
    borderTop: `1px solid ${tokens.colorNeutralStroke3}`,
    fontSize: tokens.fontSizeBase200,
    overflowWrap: 'anywhere',
  },
  cell: { fontWeight: tokens.fontWeightSemibold },
  more: { margin: '6px 0 0', color: tokens.colorNeutralForeground2, fontSize: tokens.fontSizeBase200 },
});

/** More lines are slow to draw and nobody reads them. */
const MOST_LINES = 200;

export interface CellLine {
  readonly sheet: string;
  /** Empty for what is said of the whole sheet. */
  readonly cell: string;
  readonly says: ReactNode;
}

/** Cells with what there is to say of each. */
export function CellList({ lines }: { readonly lines: readonly CellLine[] }) {
  const styles = useStyles();
  return (
    <>
      <ul className={styles.list}>
        {lines.slice(0, MOST_LINES).map(({ sheet, cell, says }, index) => (
          <li key={index} className={styles.line}>
            <span className={styles.cell}>{cell === '' ? sheet : cellText(readCell(cell, sheet))}</span>
            {says}
          </li>
        ))}
      </ul>
      {lines.length > MOST_LINES && (
        <p className={styles.more}>
          The first {MOST_LINES} of {lines.length}.
        </p>
      )}
    </>
  );
}

import { Button, makeStyles, tokens } from '@fluentui/react-components';
import type { DeskState, WhatIfDesk } from './desk';

const useStyles = makeStyles({
  part: { marginBottom: '14px' },
  heading: { margin: '0 0 4px', fontSize: tokens.fontSizeBase300 },
  list: { margin: 0, padding: 0, listStyle: 'none' },
  item: { display: 'flex', alignItems: 'center', gap: '8px', padding: '2px 0' },
  words: { flexGrow: 1, minWidth: 0, fontSize: tokens.fontSizeBase200, overflowWrap: 'anywhere' },
  old: { color: tokens.colorPaletteRedForeground1 },
  stands: { color: tokens.colorNeutralForeground2 },
});

/** What-ifs that stay in the workbook: whether each still stands, and a button that runs it again. */
export function KeptList({ desk, state }: { readonly desk: WhatIfDesk; readonly state: DeskState }) {
  const styles = useStyles();
  if (state.kept.length === 0) return null;
  return (
    <section className={styles.part} aria-label="In this workbook">
      <h2 className={styles.heading}>In this workbook</h2>
      <ul className={styles.list}>
        {state.kept.map((one) => {
          const { sheet } = one.kept.made;
          return (
            <li key={one.kept.number} className={styles.item}>
              <span className={styles.words}>
                {sheet}:{' '}
                <span className={one.isOld ? styles.old : styles.stands}>
                  {one.isOld ? 'made for other values' : 'made for the design as it stands'}
                </span>
              </span>
              <Button
                size="small"
                disabled={state.progress !== undefined}
                aria-label={`Run again: ${sheet}`}
                onClick={() => void desk.again(one)}
              >
                Run again
              </Button>
            </li>
          );
        })}
      </ul>
    </section>
  );
}

import { Button, Link, makeStyles, Spinner, tokens } from '@fluentui/react-components';
import { useState } from 'react';
import { FIRST_SAMPLE, sampleTitle } from '../panel/samples';
import { insertDesignSheet } from './designSheets';
import { messageOf } from '../panel/messageOf';
import { setPanelState } from './panelState';

const useStyles = makeStyles({
  view: {
    display: 'flex',
    flexDirection: 'column',
    gap: '10px',
    height: '100%',
    boxSizing: 'border-box',
    padding: '16px',
    overflowY: 'auto',
    backgroundColor: tokens.colorNeutralBackground1,
    color: tokens.colorNeutralForeground1,
  },
  title: { margin: 0, fontSize: tokens.fontSizeBase500, lineHeight: tokens.lineHeightBase500 },
  cards: { display: 'flex', flexDirection: 'column', gap: '8px', margin: 0, padding: 0, listStyle: 'none' },
  card: {
    padding: '10px 12px',
    border: `1px solid ${tokens.colorNeutralStroke2}`,
    borderRadius: tokens.borderRadiusMedium,
    backgroundColor: tokens.colorNeutralBackground2,
  },
  head: { margin: '0 0 2px', fontSize: tokens.fontSizeBase300 },
  says: { margin: 0, color: tokens.colorNeutralForeground2 },
  skip: { alignSelf: 'center' },
});

const CARDS = [
  [
    'Type a function',
    'Type =MOLD. in a cell, or find a function here by words and insert it. The panel shows its work.',
  ],
  [
    'Write a form',
    'A function with its inputs, units and verdict, laid out in your sheet, ready to fill in.',
  ],
  ['Share a copy', 'A copy in the worksheet’s own formulas, for anybody who has nothing installed.'],
] as const;

/** What a newcomer can do, shown once. */
export function FirstRun({ onDone }: { readonly onDone: () => void }) {
  const styles = useStyles();
  const [busy, setBusy] = useState(false);
  const insert = async () => {
    setBusy(true);
    try {
      const sheets = await insertDesignSheet(FIRST_SAMPLE);
      setPanelState({ notice: { intent: 'success', text: `Inserted: ${sheets.join(', ')}.` } });
    } catch (error) {
      setPanelState({ notice: { intent: 'error', text: messageOf(error) } });
    }
    onDone();
  };
  return (
    <section className={styles.view} aria-label="First steps">
      <h2 className={styles.title}>Functions for injection molds</h2>
      <ul className={styles.cards}>
        {CARDS.map(([head, says]) => (
          <li key={head} className={styles.card}>
            <h3 className={styles.head}>{head}</h3>
            <p className={styles.says}>{says}</p>
          </li>
        ))}
      </ul>
      {busy ? (
        <Spinner size="small" label="Inserting the design sheet" />
      ) : (
        <Button appearance="primary" onClick={() => void insert()}>
          Insert the first design sheet
        </Button>
      )}
      <p className={styles.says}>
        {sampleTitle(FIRST_SAMPLE)}: an insert that is pushed out of its seat. It comes behind your sheets.
      </p>
      <Link as="button" className={styles.skip} onClick={onDone}>
        Go to the functions
      </Link>
    </section>
  );
}

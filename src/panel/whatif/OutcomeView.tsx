import { Button, makeStyles, tokens } from '@fluentui/react-components';
import { useEffect, useRef, type ReactNode } from 'react';
import { CellError, type CellValue } from '../../cells/value';
import { numberText } from '../../core/format';
import type { Outcome } from '../../whatif/run';
import { notesOf, plainText, tableOf } from '../../whatif/table';
import { later } from '../later';
import type { WhatIfDesk } from './desk';
import { Matrices } from './Matrices';

/** The library of charts is large: it comes in a quiet moment before the first outcome. */
export const loadCharts = async () => (await import('./Charts')).Charts;
const Charts = later(loadCharts);

const useStyles = makeStyles({
  outcome: { display: 'flex', flexDirection: 'column', gap: '12px', marginTop: '20px' },
  heading: { margin: 0, fontSize: tokens.fontSizeBase300 },
  actions: { display: 'flex', flexWrap: 'wrap', gap: '8px' },
  frame: {
    maxHeight: '320px',
    overflow: 'auto',
    border: `1px solid ${tokens.colorNeutralStroke2}`,
    borderRadius: tokens.borderRadiusMedium,
    ':focus-visible': { outline: `2px solid ${tokens.colorStrokeFocus2}` },
  },
  table: { borderCollapse: 'collapse', width: '100%', fontSize: tokens.fontSizeBase200 },
  head: {
    position: 'sticky',
    top: 0,
    padding: '4px 8px',
    backgroundColor: tokens.colorNeutralBackground3,
    fontWeight: tokens.fontWeightSemibold,
    textAlign: 'right',
    verticalAlign: 'bottom',
  },
  unit: { display: 'block', color: tokens.colorNeutralForeground3, fontWeight: tokens.fontWeightRegular },
  cell: {
    padding: '3px 8px',
    borderTop: `1px solid ${tokens.colorNeutralStroke3}`,
    fontVariantNumeric: 'tabular-nums',
    textAlign: 'right',
  },
  error: { color: tokens.colorPaletteRedForeground1 },
  note: {
    margin: '2px 0',
    color: tokens.colorNeutralForeground2,
    fontSize: tokens.fontSizeBase200,
    overflowWrap: 'anywhere',
  },
});

/** More lines are slow to draw; the sheet and the copy have them all. */
const MOST_LINES = 500;

interface Props {
  readonly desk: WhatIfDesk;
  readonly outcome: Outcome;
  readonly messages: ReactNode;
}

/** What a run found, as charts and a table. */
export function OutcomeView({ desk, outcome, messages }: Props) {
  const styles = useStyles();
  const top = useRef<HTMLElement>(null);
  // The form above may fill the panel.
  useEffect(() => {
    top.current?.scrollIntoView({ block: 'start' });
  }, [outcome]);
  return (
    <section ref={top} className={styles.outcome} aria-label="Outcome">
      <h2 className={styles.heading}>
        {outcome.rows.length < outcome.planned
          ? `Stopped after ${outcome.rows.length} of ${outcome.planned} variations`
          : `${outcome.rows.length} variations`}
      </h2>
      <div className={styles.actions}>
        <Button onClick={() => void desk.write()}>Write to a new sheet</Button>
        <Button onClick={() => void desk.copy()}>Copy</Button>
      </div>
      {messages}
      <Charts outcome={outcome} />
      <Matrices outcome={outcome} />
      <OutcomeTable outcome={outcome} />
      <div>
        {notesOf(outcome).map((note) => (
          <p key={note} className={styles.note}>
            {note}
          </p>
        ))}
      </div>
    </section>
  );
}

function OutcomeTable({ outcome }: { readonly outcome: Outcome }) {
  const styles = useStyles();
  const { labels, units, rows } = tableOf(outcome);
  return (
    <div className={styles.frame} role="region" aria-label="Table of the outcome" tabIndex={0}>
      <table className={styles.table}>
        <thead>
          <tr>
            {labels.map((label, column) => (
              <th key={column} scope="col" className={styles.head}>
                {label}
                <span className={styles.unit}>{units[column]}</span>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.slice(0, MOST_LINES).map((row, index) => (
            <tr key={index}>
              {row.map((value, column) => (
                <td key={column} className={styles.cell}>
                  {value instanceof CellError ? (
                    <span className={styles.error} title={value.message}>
                      {value.code}
                    </span>
                  ) : (
                    told(value)
                  )}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      {rows.length > MOST_LINES && (
        <p className={styles.note}>
          The first {MOST_LINES} lines of {rows.length}.
        </p>
      )}
    </div>
  );
}

const told = (value: Exclude<CellValue, CellError>): string =>
  typeof value === 'number' ? numberText(value) : plainText(value);

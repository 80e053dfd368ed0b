import {
  Accordion,
  AccordionHeader,
  AccordionItem,
  AccordionPanel,
  makeStyles,
  MessageBar,
  MessageBarBody,
  tokens,
} from '@fluentui/react-components';
import type { ReactNode } from 'react';
import type { SharedCell } from '../../share';
import { cellsInWords, groupsOf } from '../../share/groups';
import { CellList } from './CellList';
import type { Shared } from './desk';

const useStyles = makeStyles({
  report: { display: 'flex', flexDirection: 'column', gap: '10px', marginTop: '20px' },
  title: { margin: 0, fontSize: tokens.fontSizeBase300, overflowWrap: 'anywhere' },
  formula: {
    display: 'block',
    fontFamily: tokens.fontFamilyMonospace,
    color: tokens.colorNeutralForeground2,
  },
  why: { display: 'block' },
});

const HEADINGS: Readonly<Record<SharedCell['how'], string>> = {
  refused: 'refused as it stands: the error stays until its inputs change',
  frozen: 'frozen: the value stays, and says so where its inputs change',
  'looked up': 'looked up in tables that go with the copy',
  native: 'native: the worksheet’s own formula',
  value: 'replaced by the value',
};

/** What became of every formula of ours in the copy: how many first, then each with the reason. */
export function SharedReport({
  shared,
  children,
}: {
  readonly shared: Shared;
  readonly children: ReactNode;
}) {
  const styles = useStyles();
  const groups = groupsOf(shared.cells);
  return (
    <section className={styles.report} aria-label="Report of the copy">
      <h3 className={styles.title}>{shared.fileName}</h3>
      {children}
      {shared.left.length > 0 && (
        <MessageBar intent="warning" layout="multiline">
          <MessageBarBody>
            MOLD functions stay in what holds no result, and do nothing on the other side:{' '}
            {shared.left.join('; ')}.
          </MessageBarBody>
        </MessageBar>
      )}
      <Accordion multiple collapsible defaultOpenItems={['refused', 'frozen']}>
        {groups.map(({ how, cells, reasons }) => (
          <AccordionItem key={how} value={how}>
            <AccordionHeader size="small" as="h4">
              {cells.length} {HEADINGS[how]}
            </AccordionHeader>
            <AccordionPanel>
              <CellList
                lines={reasons.flatMap(({ why, cells: own }) =>
                  // The same reason is told once, with the formula of its first cell.
                  (why === '' ? own : own.slice(0, 1)).map(({ sheet, cell, formula }) => ({
                    sheet,
                    cell,
                    says: (
                      <>
                        {why !== '' && own.length > 1 && `, also ${cellsInWords(own.slice(1))}`}
                        {why !== '' && <span className={styles.why}>{why}</span>}
                        <code className={styles.formula}>={formula}</code>
                      </>
                    ),
                  })),
                )}
              />
            </AccordionPanel>
          </AccordionItem>
        ))}
      </Accordion>
    </section>
  );
}

import {
  Accordion,
  AccordionHeader,
  AccordionItem,
  AccordionPanel,
  Button,
  makeStyles,
  MessageBar,
  MessageBarBody,
  Spinner,
  tokens,
} from '@fluentui/react-components';
import { useSyncExternalStore } from 'react';
import { CellError, type CellValue } from '../../cells/value';
import { numberText } from '../../core/format';
import type { CheckReport } from '../../workbook/check';
import { CellList, type CellLine } from './CellList';
import { checkDeskOf, counted, saidOnce } from './checkDesk';
import type { WorkbookFiles } from './files';

const useStyles = makeStyles({
  part: { display: 'flex', flexDirection: 'column', gap: '10px', alignItems: 'flex-start' },
  title: { margin: 0, fontSize: tokens.fontSizeBase400 },
  says: { margin: 0, color: tokens.colorNeutralForeground2, overflowWrap: 'anywhere' },
  found: { alignSelf: 'stretch' },
  content: { display: 'block' },
  formula: {
    display: 'block',
    fontFamily: tokens.fontFamilyMonospace,
    color: tokens.colorNeutralForeground2,
  },
});

/** Whether the numbers of the open workbook still hold, and what to look at. */
export function CheckPart({ files }: { readonly files: WorkbookFiles }) {
  const styles = useStyles();
  const desk = checkDeskOf(files);
  const { busy, fileName, asOpened, report, problem } = useSyncExternalStore(
    desk.subscribe,
    () => desk.state,
  );
  return (
    <section className={styles.part} aria-label="Check">
      <h2 className={styles.title}>Check the numbers</h2>
      <p className={styles.says}>
        Are the results still what the functions give now? Also finds unknown functions, likely mix-ups of
        units, values out of range, cautions.
      </p>
      {busy ? (
        <Spinner size="small" label={`Looking at ${fileName}`} />
      ) : (
        <Button onClick={() => void desk.look()}>{report ? 'Check again' : 'Check the workbook'}</Button>
      )}
      {problem !== undefined && (
        <MessageBar intent="error" layout="multiline">
          <MessageBarBody>{problem}</MessageBarBody>
        </MessageBar>
      )}
      {report && <Found report={report} what={asOpened ? `${fileName} as it was opened` : fileName} />}
    </section>
  );
}

function Found({ report, what }: { readonly report: CheckReport; readonly what: string }) {
  const styles = useStyles();
  const groups = groupsOf(report, styles);
  const count = report.formulas === 1 ? 'One MOLD formula' : `${report.formulas} MOLD formulas`;
  return (
    <div className={styles.found}>
      <p className={styles.says} role="status">
        {what}: {count}
        {groups.length === 0 ? ', nothing to look at.' : '.'}
      </p>
      <Accordion
        multiple
        collapsible
        defaultOpenItems={['changed', 'unknown', 'errors', 'blank', 'otherUnits']}
      >
        {groups.map(({ id, lines }) => (
          <AccordionItem key={id} value={id}>
            <AccordionHeader size="small" as="h3">
              {counted(lines.length, TITLES[id][0], TITLES[id][1])}
            </AccordionHeader>
            <AccordionPanel>
              <CellList lines={lines} />
            </AccordionPanel>
          </AccordionItem>
        ))}
      </Accordion>
    </div>
  );
}

interface Group {
  readonly id: keyof typeof TITLES;
  readonly lines: readonly CellLine[];
}

const TITLES = {
  changed: ['result that is not as stored', 'results that are not as stored'],
  unknown: ['unknown function', 'unknown functions'],
  errors: ['result in error', 'results in error'],
  blank: ['needed input that is blank', 'needed inputs that are blank'],
  otherUnits: ['number that looks like another unit', 'numbers that look like another unit'],
  outside: ['value outside the range of its equation', 'values outside the ranges of their equations'],
  cautions: ['caution', 'cautions'],
} as const;

function groupsOf(report: CheckReport, styles: Readonly<Record<'content' | 'formula', string>>): Group[] {
  const changed: Group = {
    id: 'changed',
    lines: report.changed.map(({ sheet, cell, formula, before, now, because }) => ({
      sheet,
      cell,
      says: (
        <>
          <span className={styles.content}>
            {valueText(before)} → {valueText(now)}
          </span>
          <code className={styles.formula}>={formula}</code>
          {because.map((why) => (
            <span key={why} className={styles.content}>
              {why}
            </span>
          ))}
        </>
      ),
    })),
  };
  const others = (['unknown', 'errors', 'blank', 'otherUnits', 'outside', 'cautions'] as const).map(
    (id): Group => ({
      id,
      lines: saidOnce(report[id]).map(({ says, cells }) => ({
        sheet: cells,
        cell: '',
        says: <span className={styles.content}>{says}</span>,
      })),
    }),
  );
  return [changed, ...others].filter(({ lines }) => lines.length > 0);
}

function valueText(value: CellValue): string {
  if (value === null) return 'blank';
  if (value instanceof CellError) return value.message ? `${value.code} ${value.message}` : value.code;
  return typeof value === 'number' ? numberText(value) : String(value);
}

import { Button, makeStyles, tokens } from '@fluentui/react-components';
import { useEffect, useState } from 'react';
import { CellError, type CellValue } from '../../cells/value';
import { areaAddress, quotedSheet } from '../../cells/address';
import { numberText, withUnit } from '../../core/format';
import { headingOf, type Heading } from '../../whatif/heading';
import { plainText } from '../../whatif/table';
import type { CellTrace, Host, Range } from '../host';
import type { SelectedCell } from '../useSelectedCell';

const useStyles = makeStyles({
  part: { marginTop: '16px' },
  heading: { margin: '0 0 4px', fontSize: tokens.fontSizeBase300 },
  list: { margin: 0, padding: 0, listStyle: 'none' },
  item: {
    display: 'flex',
    alignItems: 'baseline',
    gap: '8px',
    padding: '2px 0',
    fontSize: tokens.fontSizeBase200,
  },
  place: {
    minWidth: 0,
    padding: '0 2px',
    justifyContent: 'flex-start',
    fontWeight: tokens.fontWeightRegular,
    flexShrink: 0,
  },
  label: { flexGrow: 1, minWidth: 0, overflowWrap: 'anywhere', color: tokens.colorNeutralForeground2 },
  value: { fontVariantNumeric: 'tabular-nums', textAlign: 'right', overflowWrap: 'anywhere' },
  error: { color: tokens.colorPaletteRedForeground1 },
  says: { margin: '2px 0', color: tokens.colorNeutralForeground2, fontSize: tokens.fontSizeBase200 },
});

/** More are counted. */
const MOST = 40;
/** A range of more cells is one line. */
const FEW_CELLS = 12;

interface Line {
  readonly range: Range;
  readonly heading?: Heading;
  readonly value: CellValue;
  readonly isOne: boolean;
}

interface Shown {
  readonly reads: readonly Line[];
  readonly readers: readonly Line[];
  readonly error: readonly Line[];
  readonly trace: CellTrace;
}

/** What any formula reads, what depends on a cell, and where its error began; each a link to its cell. */
export function Trace({
  host,
  cell,
  isAlone,
}: {
  readonly host: Host;
  readonly cell: SelectedCell;
  /** No heading stands before it. */
  readonly isAlone: boolean;
}) {
  const styles = useStyles();
  const Heading = isAlone ? 'h2' : 'h3';
  const shown = useTrace(host, cell);
  if (!shown) return null;
  const { reads, readers, error, trace } = shown;
  const isFormula = trace.reads.length > 0 || trace.readsMore;
  return (
    <>
      {error.length > 0 && (
        <Part heading={Heading} title={`Where ${plainText(cell.value)} began`}>
          <p className={styles.says}>
            {error.length === 1
              ? 'In the cell that it reads:'
              : 'From the cell that it reads to the first in error:'}
          </p>
          <Lines host={host} lines={error} />
          <p className={styles.says}>{messageOf(error.at(-1)?.value)}</p>
        </Part>
      )}
      {isFormula && (
        <Part heading={Heading} title="Reads">
          <Lines host={host} lines={reads} />
          {trace.readsMore && (
            <p className={styles.says}>It may read more than its text names, or the time.</p>
          )}
        </Part>
      )}
      <Part heading={Heading} title="What depends on it">
        {readers.length === 0 ? (
          <p className={styles.says}>No formula reads this cell.</p>
        ) : (
          <Lines host={host} lines={readers} />
        )}
        {trace.readers.length > MOST && (
          <p className={styles.says}>
            The first {MOST} of {trace.readers.length}.
          </p>
        )}
      </Part>
    </>
  );
}

function Part({
  heading: Heading,
  title,
  children,
}: {
  readonly heading: 'h2' | 'h3';
  readonly title: string;
  readonly children: React.ReactNode;
}) {
  const styles = useStyles();
  return (
    <section className={styles.part} aria-label={title}>
      <Heading className={styles.heading}>{title}</Heading>
      {children}
    </section>
  );
}

function Lines({ host, lines }: { readonly host: Host; readonly lines: readonly Line[] }) {
  const styles = useStyles();
  return (
    <ul className={styles.list}>
      {lines.map(({ range, heading, value, isOne }, at) => (
        <li key={at} className={styles.item}>
          <Button
            className={styles.place}
            appearance="transparent"
            size="small"
            onClick={() => host.select?.(range)}
          >
            {addressOf(range)}
          </Button>
          <span className={styles.label}>{heading?.label === addressOf(range) ? '' : heading?.label}</span>
          <span className={value instanceof CellError ? styles.error : styles.value}>
            {isOne ? shownValue(value, heading?.unit ?? '') : `${range.rows * range.columns} cells`}
          </span>
        </li>
      ))}
    </ul>
  );
}

function useTrace(host: Host, cell: SelectedCell): Shown | undefined {
  const [shown, setShown] = useState<Shown>();
  useEffect(() => {
    let isWanted = true;
    void look(host, cell.range)
      .then((found) => {
        if (isWanted) setShown(found);
      })
      // The sheet may go while it is read.
      .catch(() => undefined);
    return () => {
      isWanted = false;
    };
  }, [host, cell]);
  return shown;
}

async function look(host: Host, range: Range): Promise<Shown | undefined> {
  const trace = await host.trace?.(range);
  if (!trace) return undefined;
  const line = async (one: Range): Promise<Line> => {
    const isOne = one.rows * one.columns === 1;
    const [[view] = []] = await host.read({ ...one, rows: 1, columns: 1 });
    return { range: one, value: view?.value ?? null, isOne, heading: await headingOf(host, one) };
  };
  // At once: a host that answers from elsewhere takes its time for each.
  const lines = (all: readonly Range[]): Promise<Line[]> =>
    Promise.all(all.flatMap(singly).slice(0, MOST).map(line));
  const [reads, readers, error] = await Promise.all([
    lines(trace.reads),
    lines(trace.readers),
    lines(trace.error),
  ]);
  return { trace, reads, readers, error };
}

/** A small range cell by cell. */
function singly(range: Range): Range[] {
  const { rows, columns } = range;
  if (rows * columns > FEW_CELLS) return [range];
  return Array.from({ length: rows * columns }, (_, at) => ({
    sheet: range.sheet,
    row: range.row + Math.floor(at / columns),
    column: range.column + (at % columns),
    rows: 1,
    columns: 1,
  }));
}

const addressOf = ({ sheet, row, column, rows, columns }: Range): string =>
  `${quotedSheet(sheet)}!${areaAddress({ top: row, left: column, bottom: row + rows - 1, right: column + columns - 1 })}`;

function shownValue(value: CellValue, unit: string): string {
  if (value === null) return 'blank';
  return typeof value === 'number' ? withUnit(numberText(value), unit) : plainText(value);
}

const messageOf = (value: CellValue | undefined): string => (value instanceof CellError ? value.message : '');

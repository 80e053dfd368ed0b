import { Button, makeStyles, tokens } from '@fluentui/react-components';
import { useEffect, useState } from 'react';
import { cellAddress } from '../../cells/address';
import { CellError } from '../../cells/value';
import { numberText, withUnit } from '../../core/format';
import type { WorksheetFunction } from '../../call/worksheetFunction';
import type { Host } from '../host';
import type { EquationDraft } from './draft';
import { keptEquations, type KeptEquation } from './kept';

const useStyles = makeStyles({
  part: { marginBottom: '16px' },
  heading: { margin: '0 0 4px', fontSize: tokens.fontSizeBase300 },
  list: { margin: 0, padding: 0, listStyle: 'none' },
  item: { display: 'flex', alignItems: 'center', gap: '6px', padding: '3px 0' },
  words: { flexGrow: 1, minWidth: 0, overflowWrap: 'anywhere' },
  equation: { fontFamily: tokens.fontFamilyMonospace },
  quiet: { color: tokens.colorNeutralForeground2, fontSize: tokens.fontSizeBase200 },
});

/** How long a person pauses before the workbook is looked through again, in ms. */
const QUIET = 300;

interface Props {
  readonly host: Host;
  readonly functions: readonly WorksheetFunction[];
  readonly onTake: (draft: EquationDraft) => void;
}

/** The equations that the workbook has already: shown where they stand, or taken into the editor. */
export function KeptEquations({ host, functions, onTake }: Props) {
  const styles = useStyles();
  const kept = useKept(host, functions);
  if (kept.length === 0) return null;
  return (
    <section className={styles.part} aria-label="In this workbook">
      <h2 className={styles.heading}>In this workbook</h2>
      <ul className={styles.list}>
        {kept.map(({ cell, value, draft }) => {
          const place = `${cell.sheet}!${cellAddress(cell.row, cell.column)}`;
          return (
            <li key={place} className={styles.item}>
              <span className={styles.words}>
                {draft.result} <span className={styles.equation}>{draft.equation}</span>{' '}
                <span className={styles.quiet}>
                  {place}:{' '}
                  {value instanceof CellError
                    ? value.message || value.code
                    : typeof value === 'number'
                      ? withUnit(numberText(value), draft.unit)
                      : String(value ?? '')}
                </span>
              </span>
              {host.select && (
                <Button size="small" aria-label={`Show ${place}`} onClick={() => host.select?.(cell)}>
                  Show
                </Button>
              )}
              <Button
                size="small"
                aria-label={`Take ${place} into the editor`}
                onClick={() => {
                  onTake(draft);
                }}
              >
                Take
              </Button>
            </li>
          );
        })}
      </ul>
    </section>
  );
}

function useKept(host: Host, functions: readonly WorksheetFunction[]): readonly KeptEquation[] {
  const [kept, setKept] = useState<readonly KeptEquation[]>([]);
  useEffect(() => {
    let isWanted = true;
    let timer: ReturnType<typeof setTimeout> | undefined;
    const look = () => {
      keptEquations(host, functions).then(
        (found) => {
          if (isWanted) setKept(found);
        },
        // The sheet may go while it is read: that calls back as well.
        () => undefined,
      );
    };
    const soon = () => {
      clearTimeout(timer);
      timer = setTimeout(look, QUIET);
    };
    look();
    const stop = host.onSelectionChange(soon);
    return () => {
      isWanted = false;
      clearTimeout(timer);
      stop();
    };
  }, [host, functions]);
  return kept;
}

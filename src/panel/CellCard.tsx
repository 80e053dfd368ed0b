import { Link, makeStyles, Text, tokens } from '@fluentui/react-components';
import { CellError } from '../cells/value';
import { NAMESPACE } from '../cells/namespace';
import type { WorksheetFunction } from '../call/worksheetFunction';
import { ArgumentCells } from './ArgumentCells';
import type { Host } from './host';
import { functionsIn } from './mentioned';
import { useRefusal } from './useRefusal';
import { useSelectedCell } from './useSelectedCell';

const useStyles = makeStyles({
  card: {
    display: 'flex',
    flexDirection: 'column',
    gap: '4px',
    padding: '10px 16px',
    borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
  },
  error: { color: tokens.colorPaletteRedForeground1 },
  links: { display: 'flex', flexWrap: 'wrap', columnGap: '12px' },
});

interface Props {
  readonly host: Host;
  readonly functions: readonly WorksheetFunction[];
  readonly onChoose: (fn: WorksheetFunction) => void;
}

/** Why the selected cell is in error, and a way to the help of the functions in it; nothing for any other cell. */
export function CellCard({ host, functions, onChoose }: Props) {
  const styles = useStyles();
  const cell = useSelectedCell(host);
  const refusal = useRefusal(cell, host, functions);
  if (!cell) return null;
  const { value, formula } = cell;
  const called = functionsIn(formula, functions);
  const error = value instanceof CellError ? value : undefined;
  if (!error && called.length === 0) return null;
  return (
    <section className={styles.card} aria-label="Selected cell">
      {error && (
        <Text className={styles.error} role="alert">
          {refusal === '' ? error.code : `${error.code} ${refusal}`}
        </Text>
      )}
      {called.length > 0 && (
        <div className={styles.links}>
          {called.map((fn) => (
            <Link
              key={fn.id}
              as="button"
              onClick={() => {
                onChoose(fn);
              }}
            >
              {NAMESPACE}.{fn.id}
            </Link>
          ))}
        </div>
      )}
      <ArgumentCells key={formula} host={host} functions={functions} cell={cell} />
    </section>
  );
}

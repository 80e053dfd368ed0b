import { Button, makeStyles, Spinner, Text, tokens } from '@fluentui/react-components';
import { useState } from 'react';
import type { FormInputs, FormOutcome, Place } from './host';
import { messageOf } from './messageOf';

const useStyles = makeStyles({
  form: { display: 'flex', flexDirection: 'column', alignItems: 'flex-start', gap: '6px', marginTop: '8px' },
  says: { color: tokens.colorNeutralForeground2, overflowWrap: 'anywhere' },
});

interface Props {
  /** What is written, in one word: `form`. */
  readonly what: string;
  readonly write: (at?: Place, inputs?: FormInputs) => Promise<FormOutcome>;
  readonly disabled?: boolean;
  readonly autoFocus?: boolean;
}

/** Writes something at the selected cell; where cells are filled, asks whether another place will do, and whether to share inputs. */
export function WriteButton({ what, write, disabled = false, autoFocus = false }: Props) {
  const styles = useStyles();
  const [busy, setBusy] = useState(false);
  const [outcome, setOutcome] = useState<FormOutcome>();
  const run = async (at?: Place, inputs?: FormInputs) => {
    setBusy(true);
    setOutcome(undefined);
    try {
      setOutcome(await write(at, inputs));
    } catch (error) {
      setOutcome({
        says: `No ${what} was written. ${messageOf(error)}`,
      });
    } finally {
      setBusy(false);
    }
  };
  const { instead, couldShare } = outcome ?? {};
  return (
    <div className={styles.form}>
      {busy ? (
        <Spinner size="small" label={`Writing the ${what}`} />
      ) : (
        <Button disabled={disabled} autoFocus={autoFocus} onClick={() => void run()}>
          Write a {what} at the selected cell
        </Button>
      )}
      <Text className={styles.says} role="status">
        {outcome?.says}
      </Text>
      {instead && !busy && <Button onClick={() => void run(instead)}>Write it at {instead.called}</Button>}
      {couldShare && !busy && (
        <>
          <Button appearance="primary" onClick={() => void run(couldShare, 'shared')}>
            Share them
          </Button>
          <Button onClick={() => void run(couldShare, 'own')}>Cells of its own</Button>
        </>
      )}
    </div>
  );
}

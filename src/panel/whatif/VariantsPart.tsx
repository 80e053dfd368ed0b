import {
  Button,
  Field,
  Input,
  makeStyles,
  MessageBar,
  MessageBarBody,
  Spinner,
  tokens,
} from '@fluentui/react-components';
import { useEffect, useMemo, useState } from 'react';
import { readCells } from '../../whatif/plan';
import { AGAIN, missingIn, type Variants } from '../../whatif/variants/read';
import type { Host, VariantsHost } from '../host';
import { latest } from '../latest';
import { messageOf } from '../messageOf';
import { rangeText } from './desk';

const useStyles = makeStyles({
  part: { display: 'flex', flexDirection: 'column', alignItems: 'stretch', gap: '12px' },
  line: { display: 'flex', gap: '6px' },
  // No width of its own, as in the other parts of What if.
  grow: { flexGrow: 1, width: 0, minWidth: 0 },
  start: { alignSelf: 'flex-start' },
  list: { margin: 0, padding: 0, listStyle: 'none' },
  item: { display: 'flex', alignItems: 'center', gap: '8px', padding: '3px 0' },
  words: { flexGrow: 1, minWidth: 0, overflowWrap: 'anywhere' },
  missing: { color: tokens.colorPaletteRedForeground1, fontSize: tokens.fontSizeBase200 },
});

interface Props {
  readonly host: Host;
  readonly variants: VariantsHost;
}

interface Acts {
  readonly busy: boolean;
  readonly act: (part: () => Promise<string>) => void;
}

/** Named sets of inputs of the workbook on the desk: begin, add, apply, work out again. */
export function VariantsPart({ host, variants }: Props) {
  const styles = useStyles();
  const [{ isRead, found }, setFound] = useState<{ readonly isRead: boolean; readonly found?: Variants }>({
    isRead: false,
  });
  const [busy, setBusy] = useState(false);
  const [said, say] = useState<{ readonly intent: 'success' | 'error'; readonly text: string }>();

  const look = useMemo(
    () =>
      latest(async () => {
        const now = await variants.read();
        const next = { isRead: true, ...(now && { found: now }) };
        setFound((before) => (JSON.stringify(before) === JSON.stringify(next) ? before : next));
      }),
    [variants],
  );
  useEffect(() => {
    void look();
    return host.onSelectionChange(() => void look());
  }, [host, look]);

  const act = (part: () => Promise<string>): void => {
    setBusy(true);
    say(undefined);
    part()
      .then(
        (text) => {
          say({ intent: 'success', text });
        },
        (error: unknown) => {
          say({ intent: 'error', text: messageOf(error) });
        },
      )
      .finally(() => {
        void look().then(() => {
          setBusy(false);
        });
      });
  };

  return (
    <div className={styles.part}>
      {found && <There variants={variants} found={found} busy={busy} act={act} />}
      {isRead && !found && <Begin host={host} variants={variants} busy={busy} act={act} />}
      {busy && <Spinner size="small" label="Working the variants out" />}
      <div aria-live="polite">
        {said && (
          <MessageBar intent={said.intent} layout="multiline">
            <MessageBarBody>{said.text}</MessageBarBody>
          </MessageBar>
        )}
      </div>
    </div>
  );
}

/** The variants that the workbook has. */
function There({
  variants,
  found,
  busy,
  act,
}: Acts & { readonly variants: VariantsHost; readonly found: Variants }) {
  const styles = useStyles();
  const [name, setName] = useState('');
  const old = found.variants.filter(({ standing }) => standing === AGAIN);
  return (
    <>
      {old.length > 0 && (
        <MessageBar intent="warning" layout="multiline">
          <MessageBarBody>
            {old.map((one) => one.name).join(', ')}: the results on the sheet were made for other values. Work
            them out again.
          </MessageBarBody>
        </MessageBar>
      )}
      <ul className={styles.list} aria-label="Variants">
        {found.variants.map((one) => {
          const missing = missingIn(found, one);
          return (
            <li key={one.name} className={styles.item}>
              <span className={styles.words}>
                {one.name}{' '}
                {missing.length > 0 && <span className={styles.missing}>missing: {missing.join(', ')}</span>}
              </span>
              <Button
                size="small"
                disabled={busy || missing.length > 0}
                aria-label={`Apply ${one.name}`}
                onClick={() => {
                  act(async () => {
                    const undo = await variants.apply(one.name);
                    return `${one.name} is in the design now. ${undo}`;
                  });
                }}
              >
                Apply
              </Button>
            </li>
          );
        })}
      </ul>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          act(async () => {
            await variants.add(name);
            setName('');
            return `${name.trim()} has the present values of ${found.inputs.map(({ label }) => label).join(', ')}.`;
          });
        }}
      >
        <Field label="Name of a variant" hint="It takes the values that the design has now.">
          <div className={styles.line}>
            <Input
              className={styles.grow}
              value={name}
              placeholder="A 3° steel"
              onChange={(_event, { value }) => {
                setName(value);
              }}
            />
            <Button type="submit" disabled={busy || name.trim() === ''}>
              Add
            </Button>
          </div>
        </Field>
      </form>
      {found.variants.length > 0 && (
        <Button
          className={styles.start}
          disabled={busy}
          onClick={() => {
            act(async () => {
              await variants.again();
              return 'The results of all variants are worked out again.';
            });
          }}
        >
          Work the results out again
        </Button>
      )}
    </>
  );
}

/** Chooses what differs from variant to variant, and what is compared. */
function Begin({ host, variants, busy, act }: Props & Acts) {
  const styles = useStyles();
  const [inputs, setInputs] = useState('');
  const [results, setResults] = useState('');
  const cells = async (text: string) => readCells(text, (await host.readSelection())?.sheet ?? '');
  const fields = [
    { label: 'Inputs that differ', text: inputs, set: setInputs, add: 'Add the selected inputs' },
    { label: 'Results to compare', text: results, set: setResults, add: 'Add the selected results' },
  ];
  return (
    <>
      {fields.map(({ label, text, set, add }) => (
        <Field key={label} label={label}>
          <div className={styles.line}>
            <Input
              className={styles.grow}
              value={text}
              aria-label={label}
              placeholder="Design!B24, Design!B26"
              onChange={(_event, { value }) => {
                set(value);
              }}
            />
            <Button
              aria-label={add}
              onClick={() => {
                void host.readSelection().then((selected) => {
                  if (selected)
                    set((before) =>
                      before.trim() === '' ? rangeText(selected) : `${before}, ${rangeText(selected)}`,
                    );
                });
              }}
            >
              Add
            </Button>
          </div>
        </Field>
      ))}
      <Button
        className={styles.start}
        appearance="primary"
        disabled={busy || inputs.trim() === '' || results.trim() === ''}
        onClick={() => {
          act(async () => {
            await variants.begin(await cells(inputs), await cells(results));
            return 'The workbook has a sheet Variants now: add a variant with the present values.';
          });
        }}
      >
        Begin with these cells
      </Button>
    </>
  );
}

import {
  Button,
  Field,
  Link,
  makeStyles,
  SearchBox,
  Text,
  Textarea,
  tokens,
} from '@fluentui/react-components';
import { useId, useMemo, useState } from 'react';
import { helpPage } from '../call/helpPage';
import { functionSearch } from '../call/search';
import { BASIS_TEXT } from '../call/version';
import type { WorksheetFunction } from '../call/worksheetFunction';
import type { Host } from '../panel/host';
import { reportText } from './report';
import { setPanelState } from './panelState';

const useStyles = makeStyles({
  view: { height: '100%', overflowY: 'auto', boxSizing: 'border-box', padding: '12px 16px 24px' },
  part: {
    display: 'flex',
    flexDirection: 'column',
    gap: '8px',
    alignItems: 'flex-start',
    marginBottom: '22px',
  },
  title: { margin: 0, fontSize: tokens.fontSizeBase400 },
  says: { margin: 0, color: tokens.colorNeutralForeground2 },
  wide: { alignSelf: 'stretch', maxWidth: 'none' },
  found: { margin: 0, paddingLeft: '18px' },
});

/** More than these nobody reads through; the index has them all. */
const MOST_FOUND = 12;

interface Props {
  readonly host: Host;
  readonly functions: readonly WorksheetFunction[];
}

/** The pages of help, what this program is, and how to tell of a fault. */
export function HelpTab({ host, functions }: Props) {
  const styles = useStyles();
  return (
    <section className={styles.view} aria-label="Help" tabIndex={0}>
      <Pages functions={functions} />
      <About />
      <Report host={host} />
    </section>
  );
}

function Pages({ functions }: Pick<Props, 'functions'>) {
  const styles = useStyles();
  const [words, setWords] = useState('');
  const find = useMemo(() => functionSearch(functions), [functions]);
  const found = words.trim() === '' ? [] : find(words).slice(0, MOST_FOUND);
  return (
    <div className={styles.part}>
      <h2 className={styles.title}>Pages of help</h2>
      <SearchBox
        className={styles.wide}
        aria-label="Search the pages of help"
        placeholder="Search by name or words"
        value={words}
        onChange={(_event, { value }) => {
          setWords(value);
        }}
      />
      {found.length > 0 && (
        <ul className={styles.found}>
          {found.map(({ id }) => (
            <li key={id}>
              <Link href={helpPage(id)} target="_blank" rel="noreferrer">
                {id}
              </Link>
            </li>
          ))}
        </ul>
      )}
      {words.trim() !== '' && found.length === 0 && (
        <Text role="status">No page speaks of this. Try another word for it.</Text>
      )}
      <Link href="help/index.html" target="_blank" rel="noreferrer">
        All pages of help
      </Link>
      <Link href="help/excel.html" target="_blank" rel="noreferrer">
        What is different in Excel: #NAME?, sharing, Goal Seek, dates
      </Link>
    </div>
  );
}

function About() {
  const styles = useStyles();
  return (
    <div className={styles.part}>
      <h2 className={styles.title}>About</h2>
      <p className={styles.says}>
        Moldsheet {BASIS_TEXT}. The basis is what results rest on: it goes up only when a result changes.
      </p>
      <p className={styles.says}>
        Nothing leaves this computer: functions, help and panel work here, and no workbook, number or click is
        sent anywhere. Excel itself loads its connection to add-ins from Microsoft.
      </p>
      <p className={styles.says}>
        License: Apache-2.0. It contains open-source libraries under the Apache-2.0, MIT, BSD, ISC and MPL-2.0
        licenses, each under its own.
      </p>
      <p className={styles.says}>
        It supports a toolmaker’s judgment and does not replace it. Clamps, compressed air, hot melt and
        loaded springs can injure: the machine’s manual, local codes and licensed practice come first.
      </p>
      <Link
        as="button"
        onClick={() => {
          setPanelState({ isFirstRun: true });
        }}
      >
        Show the first steps again
      </Link>
    </div>
  );
}

function Report({ host }: Pick<Props, 'host'>) {
  const styles = useStyles();
  const [text, setText] = useState<string>();
  const [says, setSays] = useState('');
  const id = useId();
  const copy = async () => {
    const area = document.getElementById(id);
    if (area instanceof HTMLTextAreaElement) area.select();
    try {
      await navigator.clipboard.writeText(text ?? '');
      setSays('Copied. Paste it into a message to whoever gave you this add-in.');
    } catch {
      setSays('Press Ctrl+C to copy the marked text.');
    }
  };
  return (
    <div className={styles.part}>
      <h2 className={styles.title}>Report a fault</h2>
      <p className={styles.says}>
        Writes down version, Excel and the selected cell, for you to complete, look over and send. Nothing is
        sent from here.
      </p>
      {text === undefined ? (
        <Button onClick={() => void reportText(host).then(setText)}>Write a report</Button>
      ) : (
        <>
          <Field className={styles.wide} label="Report">
            <Textarea
              id={id}
              rows={9}
              resize="vertical"
              value={text}
              onChange={(_event, { value }) => {
                setText(value);
              }}
            />
          </Field>
          <Button onClick={() => void copy()}>Copy the text</Button>
        </>
      )}
      <Text role="status">{says}</Text>
    </div>
  );
}

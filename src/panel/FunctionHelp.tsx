import { Button, Link, makeStyles, Text, tokens } from '@fluentui/react-components';

import { helpPage } from '../call/helpPage';
import { NAMESPACE } from '../cells/namespace';
import type { WorksheetFunction } from '../call/worksheetFunction';
import { signature } from '../derive/words';
import type { Host } from './host';
import { useSeparator } from './useSeparator';
import { definitionOf } from '../work/calls';
import { WriteButton } from './WriteButton';

const useStyles = makeStyles({
  help: { flexGrow: 1, minHeight: 0, overflowY: 'auto', padding: '8px 16px 16px' },
  back: { marginLeft: '-8px' },
  title: { margin: '8px 0 4px', fontSize: tokens.fontSizeBase400, overflowWrap: 'anywhere' },
  signature: {
    display: 'block',
    margin: '10px 0',
    padding: '8px 10px',
    borderRadius: tokens.borderRadiusMedium,
    backgroundColor: tokens.colorNeutralBackground3,
    fontFamily: tokens.fontFamilyMonospace,
    fontSize: tokens.fontSizeBase200,
    overflowWrap: 'anywhere',
  },
  heading: { margin: '18px 0 6px', fontSize: tokens.fontSizeBase300 },
  arguments: { margin: 0 },
  argument: { display: 'flex', justifyContent: 'space-between', gap: '8px', fontWeight: 600 },
  optional: { color: tokens.colorNeutralForeground3, fontWeight: 400, fontSize: tokens.fontSizeBase200 },
  limits: { display: 'block', fontSize: tokens.fontSizeBase200 },
  says: { margin: '0 0 10px', color: tokens.colorNeutralForeground2, overflowWrap: 'anywhere' },
});

interface Props {
  readonly host: Host;
  readonly fn: WorksheetFunction;
  /** It was chosen for its form. */
  readonly forForm: boolean;
  readonly onBack: () => void;
  readonly onInsert: (text: string) => void;
}

/** What a function means and how it is called, and a button that puts it into the selected cell. */
export function FunctionHelp({ host, fn, forForm, onBack, onInsert }: Props) {
  const styles = useStyles();
  const separator = useSeparator(host);
  const name = `${NAMESPACE}.${fn.id}`;
  const writeForm = host.writeForm?.bind(host);
  return (
    <article className={styles.help} aria-label={name}>
      <Button className={styles.back} appearance="transparent" size="small" onClick={onBack}>
        ← All functions
      </Button>
      <h2 className={styles.title}>{name}</h2>
      <Text as="p" block>
        {fn.summary}
      </Text>
      <code className={styles.signature}>{signature(fn, separator?.sign)}</code>
      {separator && separator.sign !== ',' && (
        <Text as="p" block className={styles.says}>
          Between arguments {separator.isGuess ? 'most likely stands' : 'stands'} {separator.sign} here
          {separator.isGuess && ', going by the decimal comma'}; the pages of help have commas. In text,
          numbers keep their point: "0.5 mm".
        </Text>
      )}
      <Button
        appearance="primary"
        onClick={() => {
          onInsert(`=${name}(`);
        }}
      >
        Insert at the selected cell
      </Button>
      {writeForm && definitionOf(fn) && (
        <WriteButton
          key={fn.id}
          what="form"
          autoFocus={forForm}
          write={(at, inputs) => writeForm(fn, at, inputs)}
        />
      )}
      <h3 className={styles.heading}>Arguments</h3>
      <dl className={styles.arguments}>
        {fn.parameters.map((parameter) => (
          <div key={parameter.name}>
            <dt className={styles.argument}>
              {parameter.name}
              {parameter.optional && <span className={styles.optional}>optional</span>}
            </dt>
            <dd className={styles.says}>
              {parameter.says}
              {parameter.limits !== undefined && <span className={styles.limits}>{parameter.limits}</span>}
            </dd>
          </div>
        ))}
      </dl>
      <Link href={helpPage(fn.id)} target="_blank" rel="noreferrer">
        Equation, example, range and sources
      </Link>
    </article>
  );
}

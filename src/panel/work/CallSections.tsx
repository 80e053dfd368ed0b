import { makeStyles, MessageBar, MessageBarBody, tokens } from '@fluentui/react-components';
import { rangeOf, type TypesetLine } from '../../derive/typeset';
import { SOURCE_KINDS } from '../../derive/words';
import { Equation } from './Equation';
import type { CallWork, ShownInput } from '../../work/workOfCell';

const useStyles = makeStyles({
  result: {
    margin: '12px 0',
    padding: '8px 12px',
    borderLeft: `3px solid ${tokens.colorBrandStroke1}`,
    backgroundColor: tokens.colorNeutralBackground2,
  },
  resultValue: {
    fontSize: tokens.fontSizeBase500,
    lineHeight: tokens.lineHeightBase500,
    overflowWrap: 'anywhere',
  },
  says: {
    display: 'block',
    color: tokens.colorNeutralForeground2,
    fontSize: tokens.fontSizeBase200,
    overflowWrap: 'anywhere',
  },
  heading: { margin: '18px 0 4px', fontSize: tokens.fontSizeBase300 },
  list: { margin: 0, padding: 0, listStyleType: 'none' },
  item: { padding: '6px 0', borderTop: `1px solid ${tokens.colorNeutralStroke2}` },
  head: { display: 'flex', gap: '8px', alignItems: 'baseline', flexWrap: 'wrap' },
  name: { flexGrow: 1, fontWeight: tokens.fontWeightSemibold, overflowWrap: 'anywhere' },
  value: { whiteSpace: 'nowrap' },
  provided: {
    flexGrow: 1,
    flexBasis: 0,
    color: tokens.colorNeutralForeground2,
    fontSize: tokens.fontSizeBase200,
  },
  from: { color: tokens.colorNeutralForeground1, fontWeight: tokens.fontWeightSemibold },
  unusual: {
    display: 'block',
    color: tokens.colorPaletteDarkOrangeForeground1,
    fontSize: tokens.fontSizeBase200,
  },
  message: { marginTop: '6px' },
  picture: {
    maxWidth: '450px',
    margin: '12px 0 0',
    color: tokens.colorNeutralForeground1,
    '& svg': { display: 'block', width: '100%' },
    '& .picture-accent': { color: tokens.colorBrandForeground1 },
  },
  kind: {
    marginRight: '6px',
    padding: '0 6px',
    borderRadius: tokens.borderRadiusMedium,
    border: `1px solid ${tokens.colorNeutralStroke1}`,
    fontSize: tokens.fontSizeBase200,
  },
});

type Props = Exclude<CallWork, { readonly refusal: string }>;

/** The sections of the work of one call. */
export function CallSections({ definition, work, inputs, picture, sources }: Props) {
  const styles = useStyles();
  const { lines, outside, cautions } = work;
  const results = lines.filter(({ role }) => role === 'result');
  const steps = lines.filter(({ role, tex, words }) => role !== 'input' && (tex ?? words ?? '') !== '');
  return (
    <>
      {results.map((line, i) => (
        <div key={i} className={styles.result}>
          <span className={styles.resultValue}>
            {line.symbol === 'result' ? '' : <Equation tex={`${line.symbolTex} =`} label="" inline />}{' '}
            {line.valueText}
          </span>
          <span className={styles.says}>{line.says}</span>
        </div>
      ))}
      {outside.map((says) => (
        <MessageBar key={says} className={styles.message} intent="warning" layout="multiline">
          <MessageBarBody>Out of range: {says}</MessageBarBody>
        </MessageBar>
      ))}
      {/* Drawn by our own code from numbers; every text in it is escaped there. */}
      {picture !== undefined && (
        <div className={styles.picture} dangerouslySetInnerHTML={{ __html: picture }} />
      )}
      <Inputs inputs={inputs} />
      <h3 className={styles.heading}>Steps</h3>
      <ol className={styles.list}>
        {steps.map((line, i) => (
          <StepItem key={i} line={line} />
        ))}
      </ol>
      <RangeSection definition={definition} outside={outside} />
      {cautions.length > 0 && (
        <>
          <h3 className={styles.heading}>Cautions</h3>
          {cautions.map((says) => (
            <MessageBar key={says} className={styles.message} intent="warning" layout="multiline">
              <MessageBarBody>{says}</MessageBarBody>
            </MessageBar>
          ))}
        </>
      )}
      <h3 className={styles.heading}>Sources</h3>
      <ul className={styles.list}>
        {sources.map(({ kind, cites }) => (
          <li key={cites} className={styles.item}>
            <span className={styles.kind}>{SOURCE_KINDS[kind]}</span>
            {cites}
          </li>
        ))}
      </ul>
    </>
  );
}

function Inputs({ inputs }: { readonly inputs: readonly ShownInput[] }) {
  const styles = useStyles();
  if (inputs.length === 0) return null;
  return (
    <>
      <h3 className={styles.heading}>Inputs</h3>
      <ul className={styles.list} aria-label="Inputs">
        {inputs.map(({ line, name, from, unusual }, i) => (
          <li key={i} className={styles.item}>
            <div className={styles.head}>
              {line.gives !== 'text' && <Equation tex={line.symbolTex} label="" inline />}
              <span className={from === undefined ? styles.provided : styles.name}>
                {from === undefined ? line.says : name}
              </span>
              <span className={styles.value}>{line.valueText}</span>
            </div>
            {from !== undefined && (
              <span className={styles.says}>
                {line.says} <span className={styles.from}>– {from}</span>
              </span>
            )}
            {unusual !== undefined && <span className={styles.unusual}>{unusual}</span>}
          </li>
        ))}
      </ul>
    </>
  );
}

function StepItem({ line }: { readonly line: TypesetLine }) {
  const styles = useStyles();
  return (
    <li className={styles.item}>
      <span className={styles.says}>{line.says}</span>
      {line.tex !== undefined && <Equation tex={line.tex} label={line.says} />}
      {line.numbersTex !== undefined && (
        <Equation tex={line.numbersTex} label={`${line.says}, with numbers`} />
      )}
      {line.words !== undefined && <span>{line.words}</span>}
      {line.numbersTex === undefined && (
        <div className={styles.head}>
          <span className={styles.value}>{line.valueText}</span>
        </div>
      )}
      {line.note !== undefined && <span className={styles.says}>{line.note}</span>}
    </li>
  );
}

/** Every condition of the range of validity, with what is outside of it. */
function RangeSection({
  definition,
  outside,
}: Pick<Props, 'definition'> & { readonly outside: readonly string[] }) {
  const styles = useStyles();
  const conditions = rangeOf(definition);
  if (conditions.length === 0) return null;
  return (
    <>
      <h3 className={styles.heading}>Range of validity</h3>
      <ul className={styles.list}>
        {conditions.map(({ tex, says }) => {
          const holds = !outside.includes(says);
          return (
            <li key={says} className={styles.item}>
              {tex !== undefined && <Equation tex={tex} label="Condition" />}
              <span className={styles.says}>{holds ? 'Holds with these values.' : says}</span>
            </li>
          );
        })}
      </ul>
    </>
  );
}

import {
  Link,
  makeStyles,
  MessageBar,
  MessageBarBody,
  Select,
  Text,
  tokens,
} from '@fluentui/react-components';
import { useId, useState } from 'react';
import { CellError } from '../../cells/value';
import { helpPage } from '../../call/helpPage';
import { NAMESPACE } from '../../cells/namespace';
import type { WorksheetFunction } from '../../call/worksheetFunction';
import type { Host } from '../host';
import { useSelectedCell } from '../useSelectedCell';
import type { Call } from '../../work/calls';
import { CallSections } from './CallSections';
import { isSwing } from './swing';
import { Tornado } from './Tornado';
import { Trace } from './Trace';
import { useCallWork, useCellFormula, type CellFormula } from './useWork';

const useStyles = makeStyles({
  view: { height: '100%', overflowY: 'auto', boxSizing: 'border-box', padding: '12px 16px 24px' },
  cell: { color: tokens.colorNeutralForeground3, fontSize: tokens.fontSizeBase200 },
  title: { margin: '2px 0 4px', fontSize: tokens.fontSizeBase400, overflowWrap: 'anywhere' },
  summary: { margin: 0, color: tokens.colorNeutralForeground2 },
  choose: { display: 'flex', flexDirection: 'column', gap: '2px', margin: '4px 0 8px' },
  label: { fontSize: tokens.fontSizeBase200, color: tokens.colorNeutralForeground3 },
  refusal: { marginTop: '12px' },
  none: { color: tokens.colorNeutralForeground2 },
});

interface Props {
  readonly host: Host;
  readonly functions: readonly WorksheetFunction[];
}

/** How the number in the selected cell came about, from its inputs to its sources. */
export function WorkView({ host, functions }: Props) {
  const styles = useStyles();
  const formula = useCellFormula(host, functions);
  const cell = useSelectedCell(host);
  return (
    <section className={styles.view} aria-label="Work" tabIndex={0}>
      {formula && formula.calls.length > 0 ? (
        <FormulaWork key={formula.address} formula={formula} functions={functions} />
      ) : (
        <Text as="p" className={styles.none}>
          Select a cell with a {NAMESPACE} formula: its equation, inputs, steps, range, sources and cautions
          show here.
        </Text>
      )}
      {cell && <Trace host={host} cell={cell} isAlone={!(formula && formula.calls.length > 0)} />}
    </section>
  );
}

function FormulaWork({
  formula,
  functions,
}: {
  readonly formula: CellFormula;
  readonly functions: readonly WorksheetFunction[];
}) {
  const styles = useStyles();
  const [chosen, choose] = useState(0);
  const selectId = useId();
  const { calls, address, spilledFrom } = formula;
  const call = calls[chosen] ?? calls[0];
  if (!call) return null;
  const fn = functions.find(({ id }) => id === call.id);
  return (
    <>
      <span className={styles.cell}>
        {address}
        {spilledFrom === undefined ? '' : `, filled from ${spilledFrom}`}
      </span>
      {calls.length > 1 && (
        <div className={styles.choose}>
          <label className={styles.label} htmlFor={selectId}>
            {calls.length} functions in this formula
          </label>
          <Select
            id={selectId}
            size="small"
            value={String(chosen)}
            onChange={(_event, { value }) => {
              choose(Number(value));
            }}
          >
            {calls.map(({ text }, i) => (
              <option key={i} value={String(i)}>
                {text}
              </option>
            ))}
          </Select>
        </div>
      )}
      <h2 className={styles.title}>
        {NAMESPACE}.{call.id}
      </h2>
      <p className={styles.summary}>{fn?.summary ?? 'There is no such function.'}</p>
      <CallResult formula={formula} call={call} />
      {fn && (
        <Link href={helpPage(fn.id)} target="_blank" rel="noreferrer">
          Help of {fn.id}
        </Link>
      )}
    </>
  );
}

function CallResult({ formula, call }: { readonly formula: CellFormula; readonly call: Call }) {
  const styles = useStyles();
  const shown = useCallWork(formula, call);
  const { value } = formula;
  const cellError = value instanceof CellError ? value.message || value.code : undefined;
  const error = shown && 'refusal' in shown ? shown.refusal : cellError;
  return (
    <>
      {error !== undefined && (
        <MessageBar className={styles.refusal} intent="error" layout="multiline">
          <MessageBarBody>{error}</MessageBarBody>
        </MessageBar>
      )}
      {shown && !('refusal' in shown) && <CallSections {...shown} />}
      {isSwing(call) && <Tornado call={call} around={formula.around} />}
    </>
  );
}

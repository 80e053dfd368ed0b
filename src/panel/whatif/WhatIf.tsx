import {
  Button,
  Checkbox,
  Field,
  Input,
  makeStyles,
  MessageBar,
  MessageBarActions,
  MessageBarBody,
  ProgressBar,
  Tab,
  TabList,
  Text,
  tokens,
} from '@fluentui/react-components';
import { useEffect, useSyncExternalStore } from 'react';
import { withUnit } from '../../core/format';
import { readBracket, readValues } from '../../whatif/values';
import type { Host } from '../host';
import { heldText } from '../../whatif/run';
import { deskOf, nowText, type DeskState, type InputDraft, type Mode, type WhatIfDesk } from './desk';
import { KeptList } from './KeptList';
import { MOST_PAIRS } from './Matrices';
import { loadCharts, OutcomeView } from './OutcomeView';
import { SolutionView } from './SolutionView';
import { VariantsPart } from './VariantsPart';
import { idle } from '../idle';
import { messageOf } from '../messageOf';

const useStyles = makeStyles({
  view: { height: '100%', overflowY: 'auto', boxSizing: 'border-box', padding: '12px 16px 24px' },
  form: { display: 'flex', flexDirection: 'column', gap: '14px' },
  group: {
    display: 'flex',
    flexDirection: 'column',
    gap: '8px',
    margin: 0,
    padding: 0,
    border: 'none',
    minWidth: 0,
  },
  legend: { padding: 0, marginBottom: '6px', fontWeight: tokens.fontWeightSemibold },
  line: { display: 'flex', gap: '6px' },
  // No width of its own: an input is as wide as twenty letters otherwise, too wide for a narrow panel.
  grow: { flexGrow: 1, width: 0, minWidth: 0 },
  says: { color: tokens.colorNeutralForeground2, fontSize: tokens.fontSizeBase200, overflowWrap: 'anywhere' },
  intro: { margin: '10px 0 14px', color: tokens.colorNeutralForeground2 },
  start: { alignSelf: 'flex-start' },
  message: { marginTop: '12px' },
  torn: { marginBottom: '12px' },
  list: {
    margin: 0,
    paddingLeft: '16px',
    color: tokens.colorNeutralForeground2,
    fontSize: tokens.fontSizeBase200,
  },
});

const INTRO: Readonly<Record<Mode, string>> = {
  table: 'Try other values in one or two cells and tabulate what the workbook gives for them.',
  solve: 'Find the value of one cell at which another one shows the number you want.',
  variants: 'Keep named sets of inputs side by side on a sheet of the workbook, with what each gives.',
};

/** Variations of the workbook: a table and a chart of them, or the value at which a cell meets a target. */
export function WhatIf({ host }: { readonly host: Host }) {
  const styles = useStyles();
  const desk = deskOf(host);
  const state = useSyncExternalStore(desk.subscribe, () => desk.state);
  const { mode } = state;
  useEffect(() => {
    // Where they do not come, the outcome asks again, and says so.
    void idle()
      .then(loadCharts)
      .catch(() => undefined);
  }, []);
  return (
    <section className={styles.view} aria-label="What if" tabIndex={0}>
      <Torn desk={desk} state={state} />
      <KeptList desk={desk} state={state} />
      <TabList
        size="small"
        appearance="subtle"
        selectedValue={mode}
        aria-label="What to do"
        onTabSelect={(_event, { value }) => {
          desk.setMode(value as Mode);
        }}
      >
        <Tab value="table">Table</Tab>
        <Tab value="solve">Solve</Tab>
        <Tab value="variants">Variants</Tab>
      </TabList>
      <p className={styles.intro}>
        {INTRO[mode]} {host.ownWhatIf}
      </p>
      {mode === 'variants' ? (
        <VariantsPart host={host} variants={host.variants} />
      ) : (
        <Trials desk={desk} state={state} />
      )}
    </section>
  );
}

/** What is varied, read and found. */
function Trials({ desk, state }: Part) {
  const styles = useStyles();
  const { mode, inputs, progress, outcome, solution } = state;
  // What is said of an outcome stands by its buttons.
  const shows = mode === 'table' ? outcome : solution;
  const shownInputs = mode === 'solve' ? inputs.slice(0, 1) : inputs;
  return (
    <>
      <form
        className={styles.form}
        onSubmit={(event) => {
          event.preventDefault();
          if (!progress) void desk.run();
        }}
      >
        {shownInputs.map((input, index) => (
          <VariedCell key={index} desk={desk} state={state} input={input} index={index} />
        ))}
        {mode === 'table' && inputs.length < 2 && (
          <Button
            className={styles.start}
            size="small"
            onClick={() => {
              desk.addInput();
            }}
          >
            Vary a second cell
          </Button>
        )}
        {shownInputs.some(({ view }) => view && view.formula !== '') && (
          <Checkbox
            checked={state.overFormulas}
            onChange={(_event, { checked }) => {
              desk.setOverFormulas(checked === true);
            }}
            label="Let values stand in for the formula during the run"
          />
        )}
        <ResultCells desk={desk} state={state} />
        {mode === 'solve' && (
          <Field label={withUnit('Target', unitInBrackets(state))}>
            <Input
              value={state.target}
              inputMode="decimal"
              onChange={(_event, { value }) => {
                desk.setTarget(value);
              }}
            />
          </Field>
        )}
        {mode === 'table' && runsOf(state) > MOST_PAIRS && inputs.length === 2 && (
          <Text className={styles.says}>
            Above {MOST_PAIRS} pairs the panel shows the table and charts; the matrix in the colors of its
            verdicts stands on the sheet that is written.
          </Text>
        )}
        {progress ? (
          <Running desk={desk} progress={progress} />
        ) : (
          <Button className={styles.start} type="submit" appearance="primary">
            {runLabel(state)}
          </Button>
        )}
      </form>
      {!shows && <Messages state={state} />}
      {mode === 'table' && outcome && (
        <OutcomeView desk={desk} outcome={outcome} messages={<Messages state={state} />} />
      )}
      {mode === 'solve' && solution && (
        <SolutionView desk={desk} solution={solution} messages={<Messages state={state} />} />
      )}
    </>
  );
}

function Messages({ state: { problem, notice } }: Pick<Part, 'state'>) {
  const styles = useStyles();
  return (
    <div aria-live="polite">
      {problem !== undefined && (
        <MessageBar className={styles.message} intent="error" layout="multiline">
          <MessageBarBody>{problem}</MessageBarBody>
        </MessageBar>
      )}
      {notice !== undefined && (
        <MessageBar className={styles.message} intent="success" layout="multiline">
          <MessageBarBody>{notice}</MessageBarBody>
        </MessageBar>
      )}
    </div>
  );
}

interface Part {
  readonly desk: WhatIfDesk;
  readonly state: DeskState;
}

function VariedCell({
  desk,
  state,
  input,
  index,
}: Part & { readonly input: InputDraft; readonly index: number }) {
  const styles = useStyles();
  const solving = state.mode === 'solve';
  const which = state.inputs.length > 1 && !solving ? ` ${index + 1}` : '';
  return (
    <fieldset className={styles.group}>
      <legend className={styles.legend}>Vary{which}</legend>
      <Field label={`Cell${which}`}>
        <div className={styles.line}>
          <Input
            className={styles.grow}
            value={input.address}
            placeholder="Insert!C6"
            aria-label={`Cell to vary${which}`}
            onChange={(_event, { value }) => {
              desk.setAddress(index, value);
            }}
          />
          <Button onClick={() => void desk.takeInput(index)} aria-label={`Vary${which} the selected cell`}>
            Selected
          </Button>
        </div>
      </Field>
      {input.heading && (
        <Text className={styles.says}>
          {input.heading.label}: {nowText(input)}
        </Text>
      )}
      <Field
        label={`${solving ? 'Between' : 'Values'}${which}`}
        hint={valuesHint(state.mode, input)}
        {...valuesProblem(state.mode, input)}
      >
        <Input
          value={input.values}
          placeholder={solving ? '1..20' : '3:15:1'}
          onChange={(_event, { value }) => {
            desk.setValues(index, value);
          }}
        />
      </Field>
      {state.inputs.length > 1 && !solving && (
        <Button
          className={styles.start}
          size="small"
          appearance="subtle"
          onClick={() => {
            desk.removeInput(index);
          }}
        >
          Do not vary cell {index + 1}
        </Button>
      )}
    </fieldset>
  );
}

function ResultCells({ desk, state }: Part) {
  const styles = useStyles();
  const solving = state.mode === 'solve';
  return (
    <fieldset className={styles.group}>
      <legend className={styles.legend}>{solving ? 'So that' : 'Read'}</legend>
      <Field label={solving ? 'This cell' : 'Result cells'}>
        <div className={styles.line}>
          <Input
            className={styles.grow}
            value={state.read}
            placeholder={solving ? 'Insert!C24' : 'Insert!C20, Insert!C24'}
            aria-label={solving ? 'Cell to bring to the target' : 'Cells to read'}
            onChange={(_event, { value }) => {
              desk.setRead(value);
            }}
          />
          <Button
            onClick={() => void desk.takeResults()}
            aria-label={solving ? 'Take the selected cell' : 'Add the selected cells'}
          >
            {solving ? 'Selected' : 'Add'}
          </Button>
        </div>
      </Field>
      {state.results.length > 0 && (
        <ul className={styles.list}>
          {state.results.map(({ label, unit }, index) => (
            <li key={index}>{unit === '' ? label : `${label}, ${unit}`}</li>
          ))}
        </ul>
      )}
    </fieldset>
  );
}

function Running({
  desk,
  progress,
}: {
  readonly desk: WhatIfDesk;
  readonly progress: NonNullable<DeskState['progress']>;
}) {
  const styles = useStyles();
  const { done, of } = progress;
  const counted = Number.isFinite(of);
  const text = counted ? `${done} of ${of} variations` : `${done} calculations`;
  return (
    <div className={styles.group}>
      <Field validationMessage={text} validationState="none" label="Running">
        <ProgressBar {...(counted && { value: done, max: of })} />
      </Field>
      <Button
        className={styles.start}
        onClick={() => {
          desk.cancel();
        }}
      >
        Stop
      </Button>
    </div>
  );
}

/** A run of an earlier panel that could not put the inputs back. */
function Torn({ desk, state }: Part) {
  const styles = useStyles();
  if (!state.torn) return null;
  return (
    <MessageBar className={styles.torn} intent="warning" layout="multiline">
      <MessageBarBody>
        A what-if was cut short and may have left its last values in the workbook. Before it,{' '}
        {heldText(state.torn)}.
      </MessageBarBody>
      <MessageBarActions>
        <Button onClick={() => void desk.restore()}>Put the inputs back</Button>
        <Button
          appearance="transparent"
          onClick={() => {
            desk.forget();
          }}
        >
          Leave as is
        </Button>
      </MessageBarActions>
    </MessageBar>
  );
}

function valuesHint(mode: Mode, { values, heading }: InputDraft): string {
  if (mode === 'solve')
    return withUnit('Two ends, such as 1..20,', heading?.unit ? `in ${heading.unit}` : '').replace(/,$/, '');
  const count = counted(values);
  if (count !== undefined)
    return `${count} ${count === 1 ? 'value' : 'values'}${heading?.unit ? `, in ${heading.unit}` : ''}`;
  return 'A list such as 0.1, 0.15, 0.2, or from:to:step such as 3:15:1';
}

function valuesProblem(mode: Mode, { values }: InputDraft) {
  if (values.trim() === '') return {};
  try {
    if (mode === 'solve') readBracket(values);
    else readValues(values);
    return {};
  } catch (error) {
    return {
      validationMessage: messageOf(error),
      validationState: 'error' as const,
    };
  }
}

function counted(values: string): number | undefined {
  try {
    return readValues(values).length;
  } catch {
    return undefined;
  }
}

/** No number while an input has no values. */
const runsOf = ({ inputs }: DeskState): number =>
  inputs.reduce((product, { values }) => product * (counted(values) ?? NaN), 1);

function runLabel(state: DeskState): string {
  if (state.mode === 'solve') return 'Solve';
  const runs = runsOf(state);
  return Number.isFinite(runs) ? `Run ${runs} ${runs === 1 ? 'variation' : 'variations'}` : 'Run';
}

function unitInBrackets({ results }: DeskState): string {
  const unit = results[0]?.unit ?? '';
  return unit === '' ? '' : `(${unit})`;
}

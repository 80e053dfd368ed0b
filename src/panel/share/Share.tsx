import {
  Button,
  Checkbox,
  Field,
  makeStyles,
  MessageBar,
  MessageBarBody,
  Radio,
  RadioGroup,
  Spinner,
  tokens,
} from '@fluentui/react-components';
import { useState, useSyncExternalStore, type ReactNode } from 'react';
import { CheckPart } from './CheckPart';
import { deskOf, type ShareChoice, type ShareDesk, type ShareState } from './desk';
import { chooseFile, download, type WorkbookFiles } from './files';
import { PageReport } from './PageReport';
import { ReturnedReport } from './ReturnedReport';
import { SharedReport } from './SharedReport';

const useStyles = makeStyles({
  view: { height: '100%', overflowY: 'auto', boxSizing: 'border-box', padding: '12px 16px 24px' },
  part: { display: 'flex', flexDirection: 'column', gap: '10px', alignItems: 'flex-start' },
  title: { margin: 0, fontSize: tokens.fontSizeBase400 },
  says: { margin: 0, color: tokens.colorNeutralForeground2 },
  divide: {
    width: '100%',
    margin: '24px 0 20px',
    border: 'none',
    borderTop: `1px solid ${tokens.colorNeutralStroke2}`,
  },
  actions: { display: 'flex', flexWrap: 'wrap', gap: '8px' },
  message: { marginTop: '12px' },
});

/** What each kind of copy is, in the words of the person who will get it. */
const KINDS: readonly { readonly as: ShareChoice['as']; readonly label: string }[] = [
  { as: 'native', label: 'Formulas of the worksheet’s own: inputs can still be changed' },
  { as: 'both', label: 'The same, and each MOLD formula told in a note with unit and source' },
  { as: 'values', label: 'Values only, each formula told in a note' },
  { as: 'page', label: 'A page for any browser, a phone too: it calculates, shows the work and prints' },
];

interface ShareProps {
  readonly files: WorkbookFiles;
  /** What is said first: how the program that the panel stands in shares workbooks. */
  readonly before?: ReactNode;
  /** False where the check of the numbers has a place of its own. */
  readonly checks?: boolean;
}

/** Copies for colleagues who have no MOLD functions, and their way back. */
export function Share({ files, before, checks = true }: ShareProps) {
  const styles = useStyles();
  const desk = deskOf(files);
  const state = useSyncExternalStore(desk.subscribe, () => desk.state);
  const { shared, page, returned, problem } = state;
  const place = useScrollTo([shared, returned]);
  const takes = (copy: NonNullable<typeof shared | typeof returned>) => (
    <div className={styles.actions}>
      <Button
        appearance="primary"
        onClick={() => {
          download(copy.fileName, copy.bytes);
        }}
      >
        Download
      </Button>
      {files.open && <Button onClick={() => void desk.open(copy)}>{files.open.label}</Button>}
    </div>
  );
  return (
    <section className={styles.view} aria-label="Share" tabIndex={0}>
      {checks && (
        <>
          <CheckPart files={files} />
          <hr className={styles.divide} />
        </>
      )}
      {before}
      <MakeCopy desk={desk} state={state} />
      <div aria-live="polite">
        {problem !== undefined && (
          <MessageBar className={styles.message} intent="error" layout="multiline">
            <MessageBarBody>{problem}</MessageBarBody>
          </MessageBar>
        )}
        {page && <PageReport page={page} />}
        {shared && (
          <div ref={place(shared)}>
            <SharedReport shared={shared}>{takes(shared)}</SharedReport>
          </div>
        )}
      </div>
      <hr className={styles.divide} />
      <BringBack desk={desk} state={state} />
      <div aria-live="polite">
        {returned && (
          <div ref={place(returned)}>
            <ReturnedReport returned={returned}>{takes(returned)}</ReturnedReport>
          </div>
        )}
      </div>
    </section>
  );
}

/** Brings a report into view when it comes, not when the person comes back to it. */
function useScrollTo(present: readonly (object | undefined)[]) {
  const [seen] = useState(() => new Set(present));
  return (report: object) => (element: HTMLElement | null) => {
    if (!element || seen.has(report)) return;
    seen.add(report);
    element.scrollIntoView({ block: 'start' });
  };
}

interface Part {
  readonly desk: ShareDesk;
  readonly state: ShareState;
}

function MakeCopy({ desk, state: { choice, busy } }: Part) {
  const styles = useStyles();
  return (
    <form
      className={styles.part}
      onSubmit={(event) => {
        event.preventDefault();
        void desk.share();
      }}
    >
      <h2 className={styles.title}>A copy for a colleague</h2>
      <p className={styles.says}>
        Anybody can open it, with nothing installed. This workbook stays as it is, and the copy can be brought
        back.
      </p>
      <Field label="The copy holds">
        <RadioGroup
          value={choice.as}
          onChange={(_event, { value }) => {
            desk.choose({ as: value as ShareChoice['as'] });
          }}
        >
          {KINDS.map(({ as, label }) => (
            <Radio key={as} value={as} label={label} />
          ))}
        </RadioGroup>
      </Field>
      <div>
        <Checkbox
          checked={choice.basis}
          disabled={choice.as === 'page'}
          label="Add a sheet that says what the numbers rest on"
          onChange={(_event, { checked }) => {
            desk.choose({ basis: checked === true });
          }}
        />
        <Checkbox
          checked={choice.oneCell}
          disabled={choice.as === 'values' || choice.as === 'page' || choice.let}
          label="Each formula whole in its cell, instead of a line a step on a sheet of its own"
          onChange={(_event, { checked }) => {
            desk.choose({ oneCell: checked === true });
          }}
        />
        <Checkbox
          checked={choice.let}
          disabled={choice.as === 'values' || choice.as === 'page'}
          label="Whole in its cell, shortened with LET; needs Excel 2021 or later"
          onChange={(_event, { checked }) => {
            desk.choose({ let: checked === true });
          }}
        />
      </div>
      {busy === 'sharing' ? (
        <Spinner size="small" label="Making the copy" />
      ) : (
        <Button type="submit" appearance="primary" disabled={busy !== undefined}>
          Make the copy
        </Button>
      )}
    </form>
  );
}

function BringBack({ desk, state: { busy } }: Part) {
  const styles = useStyles();
  return (
    <section className={styles.part} aria-label="Bring a copy back">
      <h2 className={styles.title}>Bring a copy back</h2>
      <p className={styles.says}>
        A copy that your colleague has worked on gets its MOLD formulas again, and you see what was changed.
      </p>
      {busy === 'restoring' ? (
        <Spinner size="small" label="Bringing the formulas back" />
      ) : (
        <div className={styles.actions}>
          <Button
            disabled={busy !== undefined}
            onClick={() => {
              chooseFile((file) => void desk.restore(file));
            }}
          >
            Choose the file…
          </Button>
          <Button disabled={busy !== undefined} onClick={() => void desk.restore()}>
            Take the open workbook
          </Button>
        </div>
      )}
    </section>
  );
}

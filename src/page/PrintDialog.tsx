import {
  Button,
  Checkbox,
  Dialog,
  DialogActions,
  DialogBody,
  DialogContent,
  DialogSurface,
  DialogTitle,
  Field,
  Input,
  makeStyles,
  Select,
  Spinner,
  tokens,
} from '@fluentui/react-components';
import { useEffect, useRef, useState } from 'react';
import type { Paper } from '../render/printPage';
import type { PrintPart } from './printed';
import type { Session } from './session';
import { messageOf } from '../panel/messageOf';

const useStyles = makeStyles({
  surface: { maxWidth: 'min(1000px, 96vw)', width: '96vw' },
  wishes: { display: 'flex', flexWrap: 'wrap', alignItems: 'end', gap: '12px', marginBottom: '12px' },
  preview: {
    width: '100%',
    height: '60vh',
    border: `1px solid ${tokens.colorNeutralStroke1}`,
    backgroundColor: 'white',
  },
});

const PARTS: Readonly<Record<PrintPart, string>> = {
  sheet: 'This sheet',
  selection: 'The selected cells',
  all: 'All sheets',
};

/** Shows the pages as they will be, and prints them or saves them as PDF by the browser's own dialog. */
export function PrintDialog({
  session,
  onClose,
}: {
  readonly session: Session;
  readonly onClose: () => void;
}) {
  const styles = useStyles();
  const [part, setPart] = useState<PrintPart>('sheet');
  const [paper, setPaper] = useState<Paper>('Letter');
  const [gridlines, setGridlines] = useState(false);
  const [showsWork, setShowsWork] = useState(false);
  const [revision, setRevision] = useState('');
  const [html, setHtml] = useState<string>();
  const [trouble, setTrouble] = useState('');
  const frame = useRef<HTMLIFrameElement>(null);

  useEffect(() => {
    let isOld = false;
    session
      .print(part, { paper, gridlines, revision, showsWork })
      .then((page) => {
        if (!isOld) setHtml(page);
      })
      .catch((error: unknown) => {
        if (!isOld) setTrouble(messageOf(error));
      });
    return () => {
      isOld = true;
    };
  }, [session, part, paper, gridlines, revision, showsWork]);

  return (
    <Dialog
      open
      onOpenChange={(_, { open }) => {
        if (!open) onClose();
      }}
    >
      <DialogSurface className={styles.surface}>
        <DialogBody>
          <DialogTitle>Print</DialogTitle>
          <DialogContent>
            <div className={styles.wishes}>
              <Field label="What">
                <Select
                  value={part}
                  onChange={(_, { value }) => {
                    setPart(value as PrintPart);
                  }}
                >
                  {Object.entries(PARTS).map(([value, words]) => (
                    <option key={value} value={value}>
                      {words}
                    </option>
                  ))}
                </Select>
              </Field>
              <Field label="Paper">
                <Select
                  value={paper}
                  onChange={(_, { value }) => {
                    setPaper(value as Paper);
                  }}
                >
                  <option>Letter</option>
                  <option>A4</option>
                </Select>
              </Field>
              <Field label="Revision">
                <Input
                  value={revision}
                  onChange={(_, { value }) => {
                    setRevision(value);
                  }}
                />
              </Field>
              <Checkbox
                label="Gridlines"
                checked={gridlines}
                onChange={(_, { checked }) => {
                  setGridlines(checked === true);
                }}
              />
              <Checkbox
                label="Work of the selected cells"
                checked={showsWork}
                onChange={(_, { checked }) => {
                  setShowsWork(checked === true);
                }}
              />
            </div>
            {trouble !== '' && <p role="alert">{trouble}</p>}
            {html === undefined && trouble === '' && <Spinner label="Laying out the pages…" />}
            {html !== undefined && (
              <iframe ref={frame} className={styles.preview} title="The pages" srcDoc={html} />
            )}
          </DialogContent>
          <DialogActions>
            <Button onClick={onClose}>Close</Button>
            <Button
              appearance="primary"
              disabled={html === undefined}
              onClick={() => frame.current?.contentWindow?.print()}
            >
              Print or save as PDF…
            </Button>
          </DialogActions>
        </DialogBody>
      </DialogSurface>
    </Dialog>
  );
}

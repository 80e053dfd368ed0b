import {
  Button,
  Dialog,
  DialogActions,
  DialogBody,
  DialogContent,
  DialogSurface,
  DialogTitle,
} from '@fluentui/react-components';
import { useEffect } from 'react';
import type { Refusal } from '../workbook/entryRules';

/** What is to become of an entry. */
export type EntryAnswer = 'keep' | 'back' | 'again';

export interface EntryQuestion extends Refusal {
  /** `Seat!B2`. */
  readonly cell: string;
  readonly answer: (what: EntryAnswer) => void;
  /** Called in the moment when the dialog is gone, before anyone can press a key. */
  readonly onGone: () => void;
}

const BUTTONS: Readonly<Record<Refusal['style'], readonly (readonly [EntryAnswer, string])[]>> = {
  stop: [
    ['again', 'Edit again'],
    ['back', 'Take it back'],
  ],
  warning: [
    ['again', 'Edit again'],
    ['keep', 'Keep it'],
    ['back', 'Take it back'],
  ],
  information: [
    ['keep', 'OK'],
    ['back', 'Take it back'],
  ],
};

/** What the workbook says to an entry outside its list or bounds. */
export function EntryDialog({ question }: { readonly question: EntryQuestion }) {
  const { style, title, text, cell, answer } = question;
  useEffect(() => question.onGone, [question]);
  return (
    <Dialog
      open
      modalType="alert"
      onOpenChange={() => {
        answer(style === 'information' ? 'keep' : 'back');
      }}
    >
      <DialogSurface>
        <DialogBody>
          <DialogTitle>{title}</DialogTitle>
          <DialogContent>
            {text} <small>({cell})</small>
          </DialogContent>
          <DialogActions>
            {BUTTONS[style].map(([what, label], index) => (
              <Button
                key={what}
                autoFocus={index === 0}
                appearance={index === 0 ? 'primary' : 'secondary'}
                onClick={() => {
                  answer(what);
                }}
              >
                {label}
              </Button>
            ))}
          </DialogActions>
        </DialogBody>
      </DialogSurface>
    </Dialog>
  );
}

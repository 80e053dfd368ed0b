import {
  Button,
  Dialog,
  DialogActions,
  DialogBody,
  DialogContent,
  DialogSurface,
  DialogTitle,
} from '@fluentui/react-components';
import { DesignSections } from '../panel/DesignSections';
import type { Session } from './session';

/** Asks for the sections of a new design sheet, and opens it. */
export function DesignDialog({
  session,
  onClose,
}: {
  readonly session: Session;
  readonly onClose: () => void;
}) {
  return (
    <Dialog
      open
      onOpenChange={(_event, { open }) => {
        if (!open) onClose();
      }}
    >
      <DialogSurface>
        <DialogBody>
          <DialogTitle>New design sheet</DialogTitle>
          <DialogContent>
            <DesignSections
              make={async (sections, system) => {
                await session.openDesign(sections, system);
                onClose();
              }}
            />
          </DialogContent>
          <DialogActions>
            <Button onClick={onClose}>Cancel</Button>
          </DialogActions>
        </DialogBody>
      </DialogSurface>
    </Dialog>
  );
}

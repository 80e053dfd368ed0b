import type { Selection, SheetDesk } from './desk';

/** What every part of the tab is about. */
export interface PartProps {
  readonly desk: SheetDesk;
  readonly selection: Selection;
}

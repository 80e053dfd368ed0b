import { Store } from '../panel/store';
import { isSeen } from './remember';

/** What the panel shows in Excel, set by the ribbon as well: in the shared runtime both live in one page. */
export interface PanelState {
  /** The id of a page of the panel. */
  readonly page: string;
  readonly notice: Notice | undefined;
  /** Shows what a newcomer can do, in place of the pages. */
  readonly isFirstRun: boolean;
}

export interface Notice {
  readonly intent: 'info' | 'success' | 'warning' | 'error';
  readonly text: string;
}

/** What is remembered of a person who has seen the first steps. */
export const FIRST_STEPS = 'first steps';

class Panel extends Store<PanelState> {
  override set(change: Partial<PanelState>): void {
    super.set(change);
  }
}

const panel = new Panel({ page: 'functions', notice: undefined, isFirstRun: !isSeen(FIRST_STEPS) });

export const readPanelState = (): PanelState => panel.state;

export const setPanelState = (change: Partial<PanelState>): void => {
  panel.set(change);
};

export const { subscribe } = panel;

/** What an error says to the person. */

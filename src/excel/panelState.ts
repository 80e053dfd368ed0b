import { Store } from '../panel/store';

/** What the panel shows in Excel, set by the ribbon as well: in the shared runtime both live in one page. */
export interface PanelState {
  /** The id of a page of the panel. */
  readonly page: string;
  readonly notice: Notice | undefined;
}

export interface Notice {
  readonly intent: 'info' | 'success' | 'warning' | 'error';
  readonly text: string;
}

class Panel extends Store<PanelState> {
  override set(change: Partial<PanelState>): void {
    super.set(change);
  }
}

const panel = new Panel({ page: 'functions', notice: undefined });

export const readPanelState = (): PanelState => panel.state;

export const setPanelState = (change: Partial<PanelState>): void => {
  panel.set(change);
};

export const { subscribe } = panel;

/** What an error says to the person. */
export const messageOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));

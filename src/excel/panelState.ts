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

let state: PanelState = { page: 'functions', notice: undefined };
const listeners = new Set<() => void>();

export const readPanelState = (): PanelState => state;

export const setPanelState = (change: Partial<PanelState>): void => {
  state = { ...state, ...change };
  for (const listener of listeners) listener();
};

export const subscribe = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

/** What an error says to the person. */
export const messageOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));

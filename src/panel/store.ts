/** What pages show and others change. */
export class Store<S extends object> {
  private readonly listeners = new Set<() => void>();

  constructor(private current: S) {}

  get state(): S {
    return this.current;
  }

  /** For `useSyncExternalStore`. */
  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  protected set(change: Partial<S>): void {
    this.current = { ...this.current, ...change };
    for (const heard of this.listeners) heard();
  }
}

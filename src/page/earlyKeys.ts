/** Longest pause between two keys of one run, in milliseconds. */
const RUN_MS = 1000;

/** Tells keys that were pressed before the sheet was on the screen: they are for no cell that a person saw. */
export class EarlyKeys {
  private stands = Infinity;
  private dropped = -Infinity;

  /** The sheet is on the screen from now on. */
  stand(now: number): void {
    this.stands = Math.min(this.stands, now);
  }

  /**
   * By the time at which it was pressed, which may be long before the page hears of it. Also the rest of a run of keys that
   * was begun before the sheet stood: half a word is no entry.
   */
  has(pressedAt: number): boolean {
    if (pressedAt >= this.stands && pressedAt - this.dropped > RUN_MS) return false;
    this.dropped = pressedAt;
    return true;
  }
}

/** How long a calculation may take. */

/** The calculation was stopped, by a person or since its time was over. What was calculated until then stands. */
export class Stopped extends Error {
  override readonly name = 'Stopped';
}

export interface Limits {
  /** Milliseconds; absent = as long as it takes. */
  readonly time?: number;
  /** Asked now and then: true ends the calculation. */
  readonly isStopped?: () => boolean;
}

/** Steps between two looks at the clock. */
const STEPS = 2_000;

export class Budget {
  private left = STEPS;
  private readonly end: number;

  constructor(private readonly limits: Limits = {}) {
    this.end = limits.time === undefined ? Infinity : performance.now() + limits.time;
  }

  spend(steps: number): void {
    this.left -= steps;
    if (this.left > 0) return;
    this.left = STEPS;
    if (this.limits.isStopped?.()) throw new Stopped('The calculation was stopped.');
    if (performance.now() > this.end) {
      throw new Stopped(
        `The calculation took longer than ${(this.limits.time ?? 0) / 1000} s and was stopped.`,
      );
    }
  }
}

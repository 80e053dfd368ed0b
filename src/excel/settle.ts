/** What tells whether Excel still calculates. */
export interface Signs {
  /** Time of the latest call of one of our functions, in ms; 0 before the first. */
  readonly lastCall: () => number;
  /** Excel's own word: necessary, but it may say Done too early and stay Pending for good. */
  readonly isDone: () => Promise<boolean>;
  /** Everything the cells show. */
  readonly shown: () => Promise<string>;
}

export interface Clock {
  readonly now: () => number;
  readonly wait: (ms: number) => Promise<void>;
}

/** One round of calls: Excel collects results for 50 ms and sends at most every 500 ms; then the round trip. */
const QUIET = 1500;
const PACE = 300;
/** Excel's word is overruled when all else has held for so long. */
const OVERRULE = 3000;
const LIMIT = 15_000;

/**
 * Waits until our functions have settled. Excel has no signal for it: custom functions run aside of the calculation,
 * and a cell shows its old value until the new one has come. So all signs must agree: no call of ours for a while,
 * Excel says it is done, and two looks at the cells are equal and show nothing busy. False where that does not happen
 * in 15 s.
 */
export const settle = async (signs: Signs, clock: Clock = realClock): Promise<boolean> => {
  const start = clock.now();
  let before: string | undefined;
  let steadySince: number | undefined;
  while (clock.now() - start <= LIMIT) {
    const shown = await signs.shown();
    const quiet = clock.now() - Math.max(start, signs.lastCall()) >= QUIET;
    if (quiet && shown === before && !shown.includes('#BUSY!')) {
      steadySince ??= clock.now();
      if ((await signs.isDone()) || clock.now() - steadySince >= OVERRULE) return true;
    } else steadySince = undefined;
    before = shown;
    await clock.wait(PACE);
  }
  return false;
};

const realClock: Clock = {
  now: () => Date.now(),
  wait: (ms) => new Promise((resolve) => setTimeout(resolve, ms)),
};

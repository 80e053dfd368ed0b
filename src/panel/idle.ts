/** Longest wait, where a page never comes to rest. */
const PATIENCE_MS = 2000;

/** Waits for a moment in which the page has nothing else to do. */
export const idle = (): Promise<void> =>
  new Promise((resolve) => {
    const done = () => {
      resolve();
    };
    // Not every browser tells of such moments.
    if (typeof requestIdleCallback === 'function') requestIdleCallback(done, { timeout: PATIENCE_MS });
    else setTimeout(done, 50);
  });

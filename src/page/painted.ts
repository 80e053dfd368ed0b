/** A page that is not on the screen paints nothing. */
const PATIENCE_MS = 100;

/** Waits until what stands now is on the screen. */
export const painted = (): Promise<void> =>
  new Promise((resolve) => {
    const done = () => {
      resolve();
    };
    setTimeout(done, PATIENCE_MS);
    requestAnimationFrame(() => {
      setTimeout(done);
    });
  });

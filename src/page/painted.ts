/** Where no picture of the page is made although it is on the screen. */
const PATIENCE_MS = 1000;

/** Waits until what stands now is on the screen; a page that is not on the screen is not waited for. */
export const painted = (): Promise<void> =>
  new Promise((resolve) => {
    const done = () => {
      resolve();
    };
    if (document.visibilityState === 'hidden') {
      done();
      return;
    }
    setTimeout(done, PATIENCE_MS);
    // The grid draws when the page is about to be painted, perhaps behind us.
    requestAnimationFrame(() => {
      requestAnimationFrame(() => {
        setTimeout(done);
      });
    });
  });

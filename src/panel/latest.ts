/**
 * Looks again whenever asked, one look at a time: who asks during a look gets the one after it, shared with others who ask
 * meanwhile. A look that fails, as where a sheet goes while it is read, leaves what was seen before.
 */
export function latest(look: () => Promise<void>): () => Promise<void> {
  let under: Promise<void> | undefined;
  let next: Promise<void> | undefined;
  const start = (): Promise<void> => {
    under = look()
      .catch(() => undefined)
      .finally(() => {
        under = undefined;
      });
    return under;
  };
  return () => {
    if (!under) return start();
    next ??= under.then(() => {
      next = undefined;
      return start();
    });
    return next;
  };
}

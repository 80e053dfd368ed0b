import { afterAll, vi } from 'vitest';

// Files share a process: what one puts in the place of a global is gone before the next.
afterAll(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

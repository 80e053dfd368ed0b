import { defineConfig } from 'vitest/config';

/** The built page in a real Chromium. Run after `npm run build`; `CHROMIUM` names the browser where it is elsewhere. */
export default defineConfig({
  test: {
    include: ['tests/browser/**/*.test.ts'],
    testTimeout: 120_000,
    hookTimeout: 150_000,
    // One after another, in one process with one browser, unless asked: the machine that runs this may have two cores.
    fileParallelism: false,
    isolate: false,
  },
});

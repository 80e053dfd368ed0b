import { readFileSync } from 'node:fs';
import { defineConfig } from 'vitest/config';
import type { Plugin } from 'vite';
import { generateOrKept, REPLACED } from './scripts/equations/generate.mjs';

const normalizePath = (file: string): string => file.replaceAll('\\', '/');

/**
 * Tests run on the equations as they are shipped: compiled. A change of any of their files compiles them again. Other
 * modules are kept from run to run by their own text, and by what says how it is read.
 */
function equations(): Plugin {
  const replaced = normalizePath(REPLACED);
  const compilerOptions = readFileSync('tsconfig.json', 'utf8');
  let files: readonly string[] = [];
  return {
    name: 'equations',
    enforce: 'pre',
    configureVitest({ experimental_defineCacheKeyGenerator: keptBy }) {
      keptBy(({ id }) => id !== replaced && compilerOptions);
    },
    async load(id) {
      if (id !== replaced) return undefined;
      const made = await generateOrKept({ alsoOthers: true });
      files = made.files.map(normalizePath);
      return made.text;
    },
    configureServer({ watcher, moduleGraph }) {
      watcher.on('change', (file) => {
        if (!files.includes(normalizePath(file))) return;
        for (const module of moduleGraph.getModulesByFile(replaced) ?? [])
          moduleGraph.invalidateModule(module);
      });
    },
  };
}

/** `vitest run -t SEAT.SINK`: what tells of one definition. To look for its name everywhere, all files would be read first. */
const OF_ONE_DEFINITION = [
  'tests/catalogue.test.ts',
  'tests/core/equations.test.ts',
  'tests/standards/checks.test.ts',
];
const asksForOne = /^run -t [A-Z]+\.[A-Z\d]+$/.test(process.argv.slice(2).join(' '));

export default defineConfig({
  plugins: [equations()],
  test: {
    include: asksForOne ? OF_ONE_DEFINITION : ['tests/**/*.test.ts'],
    exclude: ['tests/browser/**'],
    testTimeout: 60_000,
    hookTimeout: 60_000,
    setupFiles: ['tests/support/chance.ts', 'tests/support/leaveNothing.ts'],
    experimental: { fsModuleCache: true },
    // Files share a process, so that the catalogue is read once and not once for each: reading took longer than testing.
    isolate: false,
  },
});

/** Runs a script in TypeScript with all that it imports: node scripts/bundled.mjs SCRIPT [arguments]. */
import { build } from 'esbuild';
import { mkdirSync, rmSync } from 'node:fs';
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';

const [script = '', ...args] = process.argv.slice(2);
// Below node_modules, so that what is left outside the bundle is found, and where git and the linter do not look.
mkdirSync('node_modules/.cache', { recursive: true });
const outfile = resolve(`node_modules/.cache/bundled-${process.pid}.mjs`);
await build({
  entryPoints: [script],
  outfile,
  bundle: true,
  platform: 'node',
  target: 'node20',
  format: 'esm',
  banner: {
    js: "import { createRequire as requireFor } from 'node:module'; const require = requireFor(import.meta.url);",
  },
  logLevel: 'error',
});
process.on('exit', () => rmSync(outfile, { force: true }));
process.argv.splice(1, process.argv.length, outfile, ...args);
await import(pathToFileURL(outfile).href);

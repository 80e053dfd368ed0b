/** Serves the workbook page: `npm start`. Builds it first where that was not done since the last change. */
import { spawnSync } from 'node:child_process';
import { existsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { tsImport } from 'tsx/esm/api';
import { isFresh } from './build.mjs';

process.chdir(fileURLToPath(new URL('..', import.meta.url)));
const page = join('dist', 'page');
const stamp = join(page, '.built');
if (!existsSync(join(page, 'index.html')) || !(isFresh(stamp) || isFresh(join('dist', '.built')))) {
  console.log('Building the workbook page; this takes half a minute.');
  const built = spawnSync('npm', ['run', '--silent', 'build:page'], {
    stdio: ['ignore', 'ignore', 'inherit'],
    shell: process.platform === 'win32',
  });
  if (built.status !== 0) {
    console.error('The page could not be built; `npm run build:page` says why.');
    process.exit(1);
  }
  writeFileSync(stamp, '');
}
const { servePage } = await tsImport('../src/cli/serve.ts', import.meta.url);
try {
  await servePage(page, process.env.PORT, (line) => console.log(line));
} catch (error) {
  console.error(error.message);
  process.exit(2);
}

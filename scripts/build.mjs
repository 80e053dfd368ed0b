import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';

/** What the bundles are made from. */
const SOURCES = ['src', 'scripts', 'samples', 'webpack', 'webpack.config.js', 'package-lock.json'];

function newest(path) {
  if (!existsSync(path)) return 0;
  const { mtimeMs } = statSync(path);
  if (!statSync(path).isDirectory()) return mtimeMs;
  return Math.max(mtimeMs, ...readdirSync(path).map((name) => newest(join(path, name))));
}

/** Whether nothing that is built from has changed since this file was written. */
export function isFresh(stamp) {
  return newest(stamp) > Math.max(...SOURCES.map(newest));
}

/** Builds, unless nothing changed since the last build. Gives false where that failed. */
export async function buildIfStale() {
  if (isFresh('dist/.built')) return true;
  const build = spawn('npm', ['run', 'build'], { stdio: 'inherit', shell: process.platform === 'win32' });
  const [status] = await once(build, 'close');
  return status === 0;
}

// Everything into dist/, in two processes that take about the same time: a bundler works in one thread. Arguments are
// handed to both.
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { readdirSync } from 'node:fs';

const ADD_IN = 'excel';
const others = readdirSync('webpack')
  .filter((file) => file.endsWith('.js') && file !== 'shared.js')
  .map((file) => file.replace(/\.js$/, ''))
  .filter((name) => name !== ADD_IN);

async function bundle(targets) {
  const names = targets.flatMap((name) => ['--config-name', name]);
  const args = ['webpack', '--mode', 'production', ...names, ...process.argv.slice(2)];
  const [status] = await once(
    spawn('npx', args, { stdio: 'inherit', shell: process.platform === 'win32' }),
    'close',
  );
  return status === 0;
}

const built = await Promise.all([bundle([ADD_IN]), bundle(others)]);
process.exitCode = built.every(Boolean) ? 0 : 1;

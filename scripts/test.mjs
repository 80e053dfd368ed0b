// All checks; the last line is the sum of the runners' own reports. Steps that run no tests (format, lint, types, build)
// count as one each.
//
// The browser tests need a Chromium. Without one they are left out with a line that says so, or with
// REQUIRE_BROWSER=1 counted as failed. They wait much, so all else runs beside them, with a lower priority: whoever looks
// at a page is served first. With IN_TURN=1 they come after all else, two files at once: for machines of unknown speed.
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { availableParallelism, setPriority } from 'node:os';
import { relative } from 'node:path';
import { text } from 'node:stream/consumers';
import { buildIfStale } from './build.mjs';
import { findChromium } from './chromium.mjs';

const REPORTS = 'reports';
/** A little: on one slow core the unit tests must still come in time. */
const NICE = 5;

const chromium = findChromium();
const beside = Boolean(chromium) && !process.env.IN_TURN;

/** Runs a command of ours and tells whether it passed. Beside others, what it says comes in one piece at its end. */
async function run(command, args, { atOnce = !beside } = {}) {
  const child = spawn('npx', [command, ...args], {
    stdio: ['ignore', 'pipe', 'pipe'],
    shell: process.platform === 'win32',
    env: { ...process.env, ...(process.stdout.isTTY && { FORCE_COLOR: '1' }) },
  });
  const ended = once(child, 'close');
  if (atOnce) {
    child.stdout.pipe(process.stdout);
    child.stderr.pipe(process.stderr);
  } else {
    lower(child.pid);
    const said = await Promise.all([text(child.stdout), text(child.stderr)]);
    console.log(`\n${command}\n${said.join('').trim()}`);
  }
  const [status] = await ended;
  return status === 0;
}

/** Processes that it starts inherit it. */
function lower(pid) {
  try {
    setPriority(pid, NICE);
  } catch {
    // It has ended, or could not be started: its status tells.
  }
}

const one = (passed) => ({ passed: passed ? 1 : 0, failed: passed ? 0 : 1, skipped: 0 });

/** Runs vitest and counts by the report it writes, in groups of files. */
async function tests(name, args, groupOf, how) {
  const file = `${REPORTS}/${name}.json`;
  const passed = await run(
    'vitest',
    ['run', ...args, '--reporter=default', '--reporter=json', `--outputFile.json=${file}`],
    how,
  );
  const groups = new Map();
  const add = (group, kind, count) => {
    const sum = groups.get(group) ?? { passed: 0, failed: 0, skipped: 0 };
    sum[kind] += count;
    groups.set(group, sum);
  };
  const files = existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')).testResults : [];
  for (const { name: path, status, assertionResults } of files) {
    const group = groupOf(relative(process.cwd(), path).replaceAll('\\', '/'));
    for (const { status: how } of assertionResults) {
      add(group, how === 'passed' || how === 'failed' ? how : 'skipped', 1);
    }
    // A file that could not be loaded has no tests to fail.
    if (status === 'failed' && !assertionResults.some((test) => test.status === 'failed'))
      add(group, 'failed', 1);
  }
  const failed = [...groups.values()].reduce((sum, group) => sum + group.failed, 0);
  if (!passed && failed === 0) add(name, 'failed', 1);
  return groups;
}

function unitGroup(path) {
  const [, folder] = /^tests\/([^/]+)\//.exec(path) ?? [];
  return folder ?? path.replace(/^tests\/|\.test\.ts$/g, '');
}

rmSync(REPORTS, { recursive: true, force: true });
mkdirSync(REPORTS, { recursive: true });
const summary = new Map();

const built = buildIfStale();

async function browserTests() {
  if (chromium) {
    await built;
    process.env.CHROMIUM = chromium;
    // A page is at work in one thread, so that two of them fill two cores.
    const atOnce = beside ? [] : ['--fileParallelism', `--maxWorkers=${Math.min(2, availableParallelism())}`];
    const args = ['--config', 'vitest.browser.config.mts', ...atOnce];
    const groups = await tests('browser', args, () => 'browser', { atOnce: true });
    const sum = groups.get('browser') ?? one(false);
    // Tests that were all skipped show nothing of the page.
    if (sum.passed + sum.failed === 0) sum.failed = 1;
    return sum;
  }
  if (!process.env.REQUIRE_BROWSER) return undefined;
  console.error('Browser tests: no Chromium was found, and REQUIRE_BROWSER asks for them.');
  return one(false);
}

const inBrowser = beside ? browserTests() : undefined;
// The linter, which takes long in one thread, goes beside all others with a lower priority.
const linted = run('eslint', ['.'], { atOnce: false });
summary.set('format', one(await run('prettier', ['--check', '--log-level=warn', '.'])));
summary.set('types', one(await run('tsc', ['--noEmit', '-p', '.'])));
summary.set('build', one(await built));
// In turn the unit tests have every core; else the browser has one of them.
const workers = beside ? [] : [`--maxWorkers=${availableParallelism()}`];
const units = await tests('unit', workers, unitGroup);
summary.set('lint', one(await linted));
for (const [group, sum] of units) summary.set(group, sum);
const browserSum = await (inBrowser ?? browserTests());
if (browserSum) summary.set('browser', browserSum);

const total = { passed: 0, failed: 0, skipped: 0 };
console.log('');
for (const [name, sum] of summary) {
  for (const kind of Object.keys(total)) total[kind] += sum[kind];
  const also = [sum.failed && `${sum.failed} failed`, sum.skipped && `${sum.skipped} skipped`].filter(
    Boolean,
  );
  console.log(`  ${name.padEnd(12)} ${[`${sum.passed} passed`, ...also].join(', ')}`);
}
if (!summary.has('browser')) console.log('  browser      left out: no Chromium was found');
console.log('');
console.log(
  `${total.passed} passed, ${total.failed} failed${total.skipped ? `, ${total.skipped} skipped` : ''}`,
);
process.exitCode = total.failed > 0 ? 1 : 0;

// All checks, one after another; the last line is the sum of the runners' own reports. Steps that run no tests
// (format, lint, types, build) count as one each.
//
// The browser tests need a Chromium. Without one they are left out with a line that says so, or with
// REQUIRE_BROWSER=1 counted as failed.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { relative } from 'node:path';
import { buildIfStale } from './build.mjs';
import { findChromium } from './chromium.mjs';

const REPORTS = 'reports';

function run(command, args) {
  return (
    spawnSync('npx', [command, ...args], { stdio: 'inherit', shell: process.platform === 'win32' }).status ===
    0
  );
}

const one = (passed) => ({ passed: passed ? 1 : 0, failed: passed ? 0 : 1, skipped: 0 });

/** Runs vitest and counts by the report it writes, in groups of files. */
function tests(name, args, groupOf) {
  const file = `${REPORTS}/${name}.json`;
  const passed = run('vitest', [
    'run',
    ...args,
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${file}`,
  ]);
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

summary.set('format', one(run('prettier', ['--check', '--log-level=warn', '.'])));
summary.set('lint', one(run('eslint', ['.'])));
summary.set('types', one(run('tsc', ['--noEmit', '-p', '.'])));
summary.set('build', one(buildIfStale()));
for (const [group, sum] of tests('unit', [], unitGroup)) summary.set(group, sum);

const chromium = findChromium();
if (chromium) {
  process.env.CHROMIUM = chromium;
  const groups = tests('browser', ['--config', 'vitest.browser.config.mts'], () => 'browser');
  const sum = groups.get('browser') ?? one(false);
  // Tests that were all skipped show nothing of the page.
  if (sum.passed + sum.failed === 0) sum.failed = 1;
  summary.set('browser', sum);
} else if (process.env.REQUIRE_BROWSER) {
  console.error('Browser tests: no Chromium was found, and REQUIRE_BROWSER asks for them.');
  summary.set('browser', one(false));
}

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

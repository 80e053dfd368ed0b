/**
 * What a call costs, as ratios within one run: at the worksheet boundary and in the core, beside the same equation
 * written by hand; then whole workbooks, and the size of what is shipped. Run it on an idle machine, after a build.
 */
import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { join, relative } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Argument } from '../../src/cells/value';
import { findDefinition } from '../../src/call/findDefinition';
import { readCall } from '../../src/call/readCall';
import { worksheetFunction } from '../../src/call/worksheet';
import { table } from '../../src/cli/table';
import { inputsOf } from '../../src/core/define';
import { runnerOf } from '../../src/core/answer';
import { closedForms } from './closedForms';
import { columnCosts, trialCosts } from './columns';
import { fileCosts } from './files';
import { nanoseconds } from './measure';
import { RIVALS, type Rival } from './rivals';
import { moldSheets, nativeSheets } from './sheets';
import { startCosts } from './start';
import { whatIfCosts } from './whatIfs';

/** Inputs that differ from call to call, as those of a column do. */
const VARIANTS = 64;

function callCosts({ id, cells, byHand }: Rival): (string | number)[] {
  const definition = findDefinition(id);
  const variants = Array.from({ length: VARIANTS }, (_, turn): Argument[] => {
    const values = cells.map((cell) =>
      typeof cell === 'number' && cell === cells[0] ? cell * (1 + turn / 1e3) : cell,
    );
    const padded = [
      ...values,
      ...Array<undefined>(inputsOf(definition).length - values.length).fill(undefined),
    ];
    return [...padded.map((cell): Argument => (cell === undefined ? null : [[cell]])), [['mm']]];
  });
  const run = runnerOf(definition);
  const inSI = variants.map((args) => readCall(definition, args).at(0, 0).values);
  inSI.forEach((values) => {
    const [core, hand] = [run(values, 'mm'), byHand(values as never)];
    const agree =
      typeof core === 'number' ? Math.abs(core - Number(hand)) <= 1e-12 * Math.abs(core) : core === hand;
    if (!agree) throw new Error(`${id}: ${String(core)} in the core, ${String(hand)} by hand`);
  });
  const fn = worksheetFunction(definition);
  const of = <T>(list: readonly T[], turn: number): T => list[turn % VARIANTS] as T;
  const hand = nanoseconds((turn) => byHand(of(inSI, turn) as never));
  const core = nanoseconds((turn) => run(of(inSI, turn), 'mm'));
  const boundary = nanoseconds((turn) => fn.call(of(variants, turn)));
  return [
    id,
    ...[hand, core, boundary].map(Math.round),
    (core / hand).toFixed(1),
    (boundary / hand).toFixed(1),
    Math.round(boundary - core),
  ];
}

const FORMULAS_OF_A_FILE = 100_000;

const SHIPPED = [
  'moldsheet.cjs',
  'excel/functions.js',
  'excel/whole.js',
  'excel/taskpane.js',
  'page/start.js',
  'page/page.js',
  'page/grid.js',
  'page/controls.js',
  'page/page.css',
  'page/grid.css',
];

/** Sizes of what is loaded at once; what the page loads when it needs it is one line. */
function bundleSizes(): (string | number)[][] {
  const folders = ['dist', 'dist/cli', 'dist/excel', 'dist/page'].filter((folder) => existsSync(folder));
  const groups = new Map<string, number[]>();
  for (const file of folders.flatMap((folder) => readdirSync(folder).map((name) => join(folder, name)))) {
    // Names carry a hash of their content.
    const name = relative('dist', file)
      .replaceAll('\\', '/')
      .replace(/\.[0-9a-f]{8}\./, '.');
    const group =
      SHIPPED.find((one) => one === name) ??
      /^(?<part>page|cli)\/.*\.c?js$/.exec(name)?.groups?.['part']?.concat(', when needed') ??
      '';
    if (!group) continue;
    const bytes = readFileSync(file);
    const [size = 0, gzip = 0] = groups.get(group) ?? [];
    groups.set(group, [size + bytes.length, gzip + gzipSync(bytes).length]);
  }
  return [...groups].map(([name, sizes]) => [name, ...sizes.map((size) => Math.round(size / 1000))]);
}

async function main(): Promise<void> {
  console.log(
    'Nanoseconds a call: by hand, in the core, at the worksheet boundary; and how many times by hand\n',
  );
  console.log(
    table(
      ['Function', 'hand', 'core', 'boundary', 'core ×', 'boundary ×', 'boundary over core'],
      RIVALS.map(callCosts),
    ),
  );
  const forms = closedForms()
    .map(({ id, plain, core }) => ({ id, ratio: core / plain }))
    .sort((a, b) => a.ratio - b.ratio);
  const [median, worst] = [forms[forms.length >> 1], forms.at(-1)];
  console.log(
    `\n${forms.length} closed forms beside the same equations as plain JavaScript: median ${median?.ratio.toFixed(2) ?? ''} ×, worst ${worst?.ratio.toFixed(2) ?? ''} × (${worst?.id ?? ''})`,
  );
  for (const [rows, ms, MB] of columnCosts())
    console.log(
      `A column of ${rows} rows of SEAT.FORCE: ${ms.toFixed(0)} ms, ${MB.toFixed(0)} MB more than before`,
    );
  const { ours, byHand } = trialCosts();
  console.log(
    `A million trials of SEAT.FORCE: ${ours.toFixed(0)} ms, ${(ours / byHand).toFixed(2)} × a loop by hand of the same draws`,
  );
  console.log('\nWorkbooks of native formulas, milliseconds, beside HyperFormula; × is ours by theirs\n');
  console.log(table(['Formulas', 'build', 'theirs', '×', 'one edit', 'theirs', '×'], nativeSheets()));
  console.log('\nWorkbooks of our own formulas, milliseconds\n');
  console.log(table(['Formulas', 'build', 'one edit'], moldSheets()));
  const file = fileCosts(FORMULAS_OF_A_FILE);
  if (file)
    console.log(
      `\nA file of ${FORMULAS_OF_A_FILE} of our formulas read, calculated and written: ${file.ms.toFixed(0)} ms, ${file.MB.toFixed(0)} MB at most`,
    );
  for (const [runs, ms] of await whatIfCosts())
    console.log(`\n${runs} variations of the first sample, five results: ${ms.toFixed(0)} ms`);
  const start = startCosts();
  if (start)
    console.log(
      `\nStart: node -e 0 ${start.node.toFixed(0)} ms, calc of one formula ${(start.calc - start.node).toFixed(0)} ms more`,
    );
  const sizes = bundleSizes();
  console.log('\nBundles, kB\n');
  console.log(
    sizes.length > 0 ? table(['File', 'size', 'gzip'], sizes) : 'There are none: npm run build makes them.',
  );
}

void main();

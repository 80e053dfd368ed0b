/**
 * Recalculates every workbook of a folder and compares with the values that are stored in them:
 *
 *     npm run corpus -- FOLDER [--only TEXT] [--second] [--top N] [--list FILE.tsv] [--tests ORIGIN,…] [--seconds S]
 *     npm run corpus -- --structure FOLDER [--seed N] [--files N]
 *
 * A value agrees that is of the same kind as the stored one, numbers within 1e-9 of the larger. With `--second` one that
 * LibreOffice's recalculation gives agrees too. What NOW, TODAY and the random functions feed is left out.
 */
import { readdirSync, statSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { parseArgs } from 'node:util';
import { isMainThread } from 'node:worker_threads';
import { badCells, report } from './report';
import { recalculateAll } from './pool';
import { structureReport, tryStructure } from './structure';
import { askForSecondOpinions } from './secondOpinion';

async function main(): Promise<void> {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: {
      only: { type: 'string' },
      second: { type: 'boolean', default: false },
      top: { type: 'string', default: '40' },
      list: { type: 'string' },
      tests: { type: 'string', default: 'ironcalc' },
      seconds: { type: 'string', default: '60' },
      structure: { type: 'boolean', default: false },
      seed: { type: 'string', default: String(Date.now() % 1e6) },
      files: { type: 'string', default: '60' },
    },
  });
  const [folder] = positionals;
  if (folder === undefined) throw new Error('Which folder? npm run corpus -- FOLDER');
  if (values.structure) {
    process.exitCode = structureReport(
      tryStructure(folder, Number(values.seed), Number(values.files)),
      values.seed,
    );
    return;
  }
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.xls[xm]$/i.test(name) && (values.only === undefined || name.includes(values.only)))
    .map((name) => join(folder, name))
    .filter((file) => statSync(file).isFile())
    .sort();
  const results = await recalculateAll(files, Number(values.seconds), false);
  const calculated = results.filter(({ scored }) => scored.length > 0).map(({ file }) => file);
  if (values.second) await askForSecondOpinions(calculated);
  const judged = values.second ? await recalculateAll(calculated, Number(values.seconds), true) : results;

  const refused = results.filter((one) => one.refused !== undefined);
  const failed = results.filter((one) => one.failed !== undefined);
  console.log(
    `${files.length} files: ${calculated.length} with formulas, ${refused.length} refused, ${failed.length} failed`,
  );
  for (const { file, refused: why = '' } of refused) console.log(`  refused: ${basename(file)}: ${why}`);
  for (const { file, failed: why = '' } of failed)
    console.log(`  failed: ${basename(file)}: ${why.split('\n').slice(0, 3).join(' ')}`);
  const slowest = [...results].sort((a, b) => b.milliseconds - a.milliseconds).slice(0, 3);
  console.log(
    `slowest: ${slowest.map((one) => `${basename(one.file)} ${Math.round(one.milliseconds)} ms`).join(', ')}\n`,
  );
  console.log(report(judged, { top: Number(values.top), functionTests: new Set(values.tests.split(',')) }));
  if (values.list !== undefined) writeFileSync(values.list, `${badCells(judged)}\n`);
}

if (isMainThread) await main();
else await import('./worker');

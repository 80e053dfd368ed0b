import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { NAMESPACE } from '../../src/cells/namespace';
import { newWorkbook } from '../../src/package/author';
import { saveWorkbook } from '../../src/package/save';

const ROUNDS = 3;

/** Says at its end what a process took. */
const METER = `process.on('exit', () => {
  const { user, system } = process.cpuUsage();
  process.stderr.write(JSON.stringify({ ms: (user + system) / 1000, MB: process.resourceUsage().maxRSS / 1000 }));
});`;

interface FileCost {
  readonly ms: number;
  readonly MB: number;
}

/** A file of so many formulas of ours read, calculated and written by the command line; undefined without a build. */
export function fileCosts(formulas: number): FileCost | undefined {
  const cli = 'dist/moldsheet.cjs';
  if (!existsSync(cli)) return undefined;
  const folder = mkdtempSync(join(tmpdir(), 'bench-'));
  try {
    const [meter, from, to] = ['meter.cjs', 'in.xlsx', 'out.xlsx'].map((name) => join(folder, name)) as [
      string,
      string,
      string,
    ];
    writeFileSync(meter, METER);
    writeFileSync(
      from,
      saveWorkbook(newWorkbook({ sheets: [{ name: 'Sheet1', cells: cellsOf(formulas) }] }), []),
    );
    const rounds = Array.from({ length: ROUNDS }, () => {
      const { stderr } = spawnSync(process.execPath, ['--require', meter, cli, 'recalc', from, '-o', to], {
        encoding: 'utf8',
      });
      return JSON.parse(stderr) as FileCost;
    });
    return { ms: Math.min(...rounds.map(({ ms }) => ms)), MB: Math.max(...rounds.map(({ MB }) => MB)) };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const cellsOf = (formulas: number) =>
  Object.fromEntries(
    Array.from({ length: formulas }, (_, row) => [
      [`A${row + 1}`, 400 + row],
      [`B${row + 1}`, { formula: `${NAMESPACE}.SEAT.FORCE(A${row + 1},5,0.15)` }],
    ]).flat(),
  ) as Record<string, number | { readonly formula: string }>;

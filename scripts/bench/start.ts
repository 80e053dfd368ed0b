import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

const ROUNDS = 20;

function started(args: readonly string[]): number {
  const start = performance.now();
  spawnSync(process.execPath, args, { stdio: 'ignore' });
  return performance.now() - start;
}

const median = (list: readonly number[]): number => [...list].sort((a, b) => a - b)[list.length >> 1] ?? NaN;

/** Milliseconds of a bare Node and of one formula on the command line, in turns; undefined without a build. */
export function startCosts(): { readonly node: number; readonly calc: number } | undefined {
  const cli = 'dist/moldsheet.cjs';
  if (!existsSync(cli)) return undefined;
  const rounds = Array.from({ length: ROUNDS }, () => [
    started(['-e', '0']),
    started([cli, 'calc', '=MOLD.SEAT.FORCE(400,5,0.15)']),
  ]);
  return { node: median(rounds.map(([a = NaN]) => a)), calc: median(rounds.map(([, b = NaN]) => b)) };
}

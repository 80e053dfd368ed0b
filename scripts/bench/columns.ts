import { worksheetFunctions } from '../../src/call/functions';
import { cpu } from './measure';
import { seededDeviates, summarize } from '../../src/core/random';

const fn = (id: string): (typeof worksheetFunctions)[number] => {
  const found = worksheetFunctions.find((one) => one.id === id);
  if (!found) throw new Error(`There is no ${id}.`);
  return found;
};

const best = (run: () => unknown, rounds = 3): number =>
  Math.min(
    ...Array.from({ length: rounds }, () => {
      const start = cpu();
      run();
      return cpu() - start;
    }),
  );

/** Milliseconds for columns of SEAT.FORCE, one call each, and by how much the memory ever taken grew. */
export function columnCosts(): [rows: number, ms: number, MB: number][] {
  return [50_000, 1_048_576].map((rows) => {
    const pushes = Array.from({ length: rows }, (_, i) => [400 + i / 100]);
    const force = fn('SEAT.FORCE');
    const before = process.resourceUsage().maxRSS;
    const ms = best(() => force.call([pushes, [[5]], [[0.15]], [['mm']]]));
    return [rows, ms, (process.resourceUsage().maxRSS - before) / 1000];
  });
}

/** Milliseconds for trials of SEAT.FORCE, and for the same draws, equation and summary in a loop by hand. */
export function trialCosts(trials = 1_000_000): { readonly ours: number; readonly byHand: number } {
  const spread = fn('TRY.SPREAD');
  const force = [
    ['push', 400, 40, 'normal'],
    ['draft', 5, 0.5, 'normal'],
    ['friction', 0.15, 0.03, 'normal'],
  ];
  const ours = best(() => spread.call([[['SEAT.FORCE']], force, [[trials]], [[7]], [['mm']]]));
  const byHand = best(() => {
    const deviates = seededDeviates(7);
    const rad = Math.PI / 180;
    const [push, draft, friction] = [
      deviates('normal', 40),
      deviates('normal', 0.5 * rad),
      deviates('normal', 0.03),
    ];
    const results = new Float64Array(trials);
    for (let i = 0; i < trials; i++) {
      const [F, a, mu] = [400 + push(), 5 * rad + draft(), 0.15 + friction()];
      results[i] = F / (Math.sin(a) + mu * Math.cos(a));
    }
    return summarize(results);
  });
  return { ours, byHand };
}

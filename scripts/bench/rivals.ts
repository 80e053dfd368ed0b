import type { CellValue } from '../../src/cells/value';
import { DRILLS, type Drill } from '../../src/tables/drills';
import { FULL_THREAD, type Thread } from '../../src/tables/threads';

interface Metal {
  readonly modulus: number;
  readonly poisson: number;
}

/** A function as its user calls it, beside the same equations written by hand on SI numbers. */
export interface Rival {
  readonly id: string;
  /** As typed in a cell, in mm and N; the first number is varied from call to call. */
  readonly cells: readonly (CellValue | undefined)[];
  readonly byHand: (values: never) => number | string;
}

const seatStiffness = (
  a: number,
  mu: number,
  r: number,
  L: number,
  b: number,
  i: Metal,
  o: Metal,
): number => {
  const C = ((b * b + r * r) / (b * b - r * r) + o.poisson) / o.modulus + (1 - i.poisson) / i.modulus;
  return (2 * Math.PI * L * Math.tan(a) * Math.tan(a + Math.atan(mu))) / C;
};

function tapDrill(thread: Thread, percent = 0.75): Drill {
  const ideal = thread.major - FULL_THREAD * thread.pitch * percent;
  let best = DRILLS[0] as Drill;
  for (const drill of DRILLS) {
    if (Math.abs(drill.diameter - ideal) < Math.abs(best.diameter - ideal)) best = drill;
  }
  return best;
}

const ROUND_SEAT = [5, 0.15, 10, 12, 25, 'P20', '7075-T6'] as const;

export const RIVALS: readonly Rival[] = [
  {
    id: 'SEAT.FORCE',
    cells: [400, 5, 0.15],
    byHand: ([F, a, mu]: [number, number, number]) => F / (Math.sin(a) + mu * Math.cos(a)),
  },
  {
    id: 'SEAT.RELEASE',
    cells: [400, 5, 0.15, 0.2],
    byHand: ([F, a, mu, release]: [number, number, number, number]) => {
      const S = F / Math.tan(a + Math.atan(mu));
      return S * Math.max(0, Math.tan(Math.atan(release) - a));
    },
  },
  { id: 'SEAT.FREEDRAFT', cells: [0.15], byHand: ([mu]: [number]) => Math.atan(mu) },
  {
    id: 'SEAT.SINK',
    cells: [3000, ...ROUND_SEAT],
    byHand: ([F, a, mu, r, L, b, i, o]: [number, number, number, number, number, number, Metal, Metal]) =>
      F / seatStiffness(a, mu, r, L, b, i, o),
  },
  {
    id: 'SEAT.STEP',
    cells: [3000, 1000, ...ROUND_SEAT],
    byHand: ([F, m, a, mu, r, L, b, i, o]: [
      number,
      number,
      number,
      number,
      number,
      number,
      number,
      Metal,
      Metal,
    ]) => (F - m) / seatStiffness(a, mu, r, L, b, i, o),
  },
  { id: 'SEAT.HEIGHT', cells: [0.01, 5], byHand: ([w, a]: [number, number]) => w / (2 * Math.tan(a)) },
  {
    id: 'SPRING.PRELOAD',
    cells: [8, 40, 32, 0.5],
    byHand: ([k, free, pocket, shim]: [number, number, number, number]) =>
      k * Math.max(0, free - (pocket - shim)),
  },
  {
    id: 'SPRING.SHIM',
    cells: [8, 40, 32, 80],
    byHand: ([k, free, pocket, F]: [number, number, number, number]) => pocket - (free - F / k),
  },
  { id: 'TAP.DRILL', cells: ['10-32', 75], byHand: ([t, p]: [Thread, number]) => tapDrill(t, p).diameter },
  { id: 'TAP.DRILLNAME', cells: ['10-32', 75], byHand: ([t, p]: [Thread, number]) => tapDrill(t, p).name },
  {
    id: 'FLUSH.STOCK',
    cells: [0.01, 5, 0.02, 0.01, 0.003, 0.05],
    byHand: ([w, a, cutoff, touch, bedding, least]: [number, number, number, number, number, number]) =>
      w / (2 * Math.tan(a)) + cutoff + touch + bedding + least,
  },
  {
    id: 'CLAMP.TONNAGE',
    cells: [1200, 10, 1.2],
    byHand: ([A, p, S]: [number, number, number]) => S * p * A,
  },
];

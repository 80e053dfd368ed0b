import { fromMemory, type Source } from '../core/define';
import { type Drill, DRILLS } from './drills';
import type { Thread } from './threads';

/** Drills before tapping of ISO metric threads, ISO 2306. */
export const TAP_DRILLS_SOURCE: Source = fromMemory(
  'ISO 2306:1972; every drill lies within the 6H minor diameter limits, M4 to M10 also read on a public page',
);

// Thread and drill, mm.
// prettier-ignore
const LIST = `
  M1 0.75  M1.1 0.85  M1.2 0.95  M1.4 1.1  M1.6 1.25  M1.8 1.45  M2 1.6  M2.2 1.75  M2.5 2.05  M3 2.5  M3.5 2.9
  M4 3.3  M4.5 3.7  M5 4.2  M6 5  M7 6  M8 6.8  M9 7.8  M10 8.5  M11 9.5  M12 10.2  M14 12  M16 14  M18 15.5
  M20 17.5  M22 19.5  M24 21  M27 24  M30 26.5  M33 29.5  M36 32  M39 35  M42 37.5  M45 40.5  M48 43  M52 47  M56 50.5
  M2.5x0.35 2.15  M3x0.35 2.65  M4x0.5 3.5  M5x0.5 4.5  M6x0.75 5.2  M8x1 7  M10x1 9  M10x1.25 8.8  M12x1 11
  M12x1.25 10.8  M12x1.5 10.5  M14x1.5 12.5  M16x1 15  M16x1.5 14.5  M18x1.5 16.5  M18x2 16  M20x1.5 18.5  M20x2 18
  M22x1.5 20.5  M24x2 22  M30x2 28`;

const drillOf = new Map(
  LIST.trim()
    .split(/\s{2,}/)
    .map((pair) => pair.split(' ') as [string, string]),
);

/** The threads that the list has. */
export const ISO_2306_THREADS: readonly string[] = [...drillOf.keys()];

/** The drill that ISO 2306 gives for a thread, where it gives one. */
export function isoTapDrill({ name }: Thread): Drill | undefined {
  const size = drillOf.get(name);
  if (size === undefined) return undefined;
  return DRILLS.find(
    ({ series, diameter }) => series === 'metric' && Math.abs(diameter - Number(size) / 1000) < 1e-9,
  );
}

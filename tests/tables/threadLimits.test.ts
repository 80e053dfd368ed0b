import { describe, expect, it } from 'vitest';
import {
  threadLimits,
  THREAD_CLASSES,
  type LimitedDiameter,
  type ThreadClass,
} from '../../src/tables/threadLimits';
import { findThread } from '../../src/tables/threadName';
import { minorDiameter, pitchDiameter, THREADS } from '../../src/tables/threads';

// Shared limits of a thread in printed units: [max, min].
const limits = (given: string, of: ThreadClass, diameter: LimitedDiameter) => {
  const thread = findThread(given);
  const { min = NaN, max = NaN } = threadLimits(thread, of, diameter);
  const printed = (metres: number) =>
    Number((thread.system === 'UN' ? metres / 0.0254 : metres * 1000).toFixed(5));
  return [printed(max), printed(min)];
};

describe('ASME B1.1 limits', () => {
  // Rows of ASME B1.1-2019 as listed in an open thread table (denavit/ScrewThreadLib): screw major, screw pitch, nut minor,
  // nut pitch; each max, min in inches.
  it.each([
    ['10-24', 0.189, 0.1818, 0.1619, 0.1586, 0.155, 0.145, 0.1672, 0.1629],
    ['10-32', 0.1891, 0.1831, 0.1688, 0.1658, 0.164, 0.156, 0.1736, 0.1697],
    ['1/4-20', 0.2489, 0.2408, 0.2164, 0.2127, 0.207, 0.196, 0.2224, 0.2175],
    ['1/4-28', 0.249, 0.2425, 0.2258, 0.2225, 0.22, 0.211, 0.2311, 0.2268],
    ['1/2-13', 0.4985, 0.4876, 0.4485, 0.4435, 0.434, 0.417, 0.4565, 0.45],
    ['1/2-20', 0.4987, 0.4906, 0.4662, 0.4619, 0.457, 0.446, 0.4731, 0.4675],
    ['3/4-10', 0.7482, 0.7353, 0.6832, 0.6773, 0.663, 0.642, 0.6927, 0.685],
    ['3/4-16', 0.7485, 0.7391, 0.7079, 0.7029, 0.696, 0.682, 0.7159, 0.7094],
    ['1-8', 0.998, 0.983, 0.9168, 0.9101, 0.89, 0.865, 0.9276, 0.9188],
    ['1-12', 0.9982, 0.9868, 0.9441, 0.9382, 0.928, 0.91, 0.9535, 0.9459],
  ])('%s', (given, ...row) => {
    expect([
      ...limits(given, '2A', 'major'),
      ...limits(given, '2A', 'pitch'),
      ...limits(given, '2B', 'minor'),
      ...limits(given, '2B', 'pitch'),
    ]).toEqual(row);
  });

  it('keeps the nut minor diameter to four decimals below #6 (4-40: 0.0849 to 0.0939, from memory of ASME B1.1)', () => {
    expect(limits('4-40', '2B', 'minor')).toEqual([0.0939, 0.0849]);
  });
});

describe('ISO 965-1 limits', () => {
  // Rows of ASME B1.13M-2005 in inches, as listed in an open thread table (denavit/ScrewThreadLib): screw major, screw pitch,
  // nut minor, nut pitch. The smallest 6g pitch diameter of M12 stands there as 0.42023; 0.42043 (10.679 mm) is meant.
  it.each([
    ['M8', 0.31386, 0.30551, 0.28189, 0.27724, 0.27213, 0.26169, 0.28929, 0.28299],
    ['M12', 0.4711, 0.46067, 0.42634, 0.42043, 0.41106, 0.39787, 0.43555, 0.42768],
    ['M20', 0.78575, 0.77256, 0.72181, 0.71512, 0.69858, 0.68087, 0.73228, 0.72346],
    ['M24', 0.94299, 0.92823, 0.86626, 0.85839, 0.83669, 0.81701, 0.87858, 0.86815],
  ])('%s', (given, ...row) => {
    const found = [
      ...limits(given, '6g', 'major'),
      ...limits(given, '6g', 'pitch'),
      ...limits(given, '6H', 'minor'),
      ...limits(given, '6H', 'pitch'),
    ];
    found.forEach((mm, i) => {
      expect(Math.abs(mm / 25.4 - (row[i] ?? NaN)), String(i)).toBeLessThan(0.00003);
    });
  });

  // From memory of the limits of size for 6g and 6H in ISO 965-2, mm.
  it.each([
    ['M3', '6g', 'pitch', 2.655, 2.58],
    ['M6', '6g', 'major', 5.974, 5.794],
    ['M6', '6g', 'pitch', 5.324, 5.212],
    ['M6', '6H', 'minor', 5.153, 4.917],
    ['M6', '6H', 'pitch', 5.5, 5.35],
    ['M10', '6g', 'pitch', 8.994, 8.862],
    ['M10', '6H', 'pitch', 9.206, 9.026],
  ] as const)('%s %s %s', (given, of, diameter, max, min) => {
    expect(limits(given, of, diameter)).toEqual([max, min]);
  });

  // ISO 965-1 Table of TD2, grade 6, from memory: diameter step, pitch, µm. Ours follows the screw's tolerance by preferred numbers.
  it.each([
    ['M1.6', 85],
    ['M2', 90],
    ['M3', 100],
    ['M4', 118],
    ['M5', 125],
    ['M6', 150],
    ['M8', 160],
    ['M10', 180],
    ['M12', 200],
    ['M16', 212],
    ['M20', 224],
    ['M24', 265],
    ['M30', 280],
    ['M36', 300],
    ['M42', 315],
    ['M48', 335],
    ['M56', 355],
    ['M64', 375],
    ['M12x1.25', 180],
    ['M16x1', 160],
  ])('the pitch diameter of a %s nut has a tolerance of %d µm', (given, tolerance) => {
    const { min = NaN, max = NaN } = threadLimits(findThread(given), '6H', 'pitch');
    expect((max - min) * 1e6).toBeCloseTo(tolerance, 6);
  });

  it('follows the formulas of the standard within the rounding to preferred numbers', () => {
    for (const thread of THREADS.filter(({ system }) => system === 'ISO')) {
      const P = thread.printed.pitch;
      const major = threadLimits(thread, '6g', 'major');
      const es = 1e6 * (thread.major - (major.max ?? NaN));
      const Td = 1e6 * ((major.max ?? NaN) - (major.min ?? NaN));
      expect(Math.abs(es - (15 + 11 * P)), `${thread.name} es`).toBeLessThan(2);
      expect(Math.abs(Td / (180 * P ** (2 / 3) - 3.15 / Math.sqrt(P)) - 1), `${thread.name} Td`).toBeLessThan(
        0.055,
      );
      if (P < 0.3) continue;
      const minor = threadLimits(thread, '6H', 'minor');
      const TD1 = 1e6 * ((minor.max ?? NaN) - (minor.min ?? NaN));
      const formula = P <= 0.8 ? 433 * P - 190 * P ** 1.22 : 230 * P ** 0.7;
      expect(Math.abs(TD1 / formula - 1), `${thread.name} TD1`).toBeLessThan(0.045);
    }
  });

  it('has the pitch diameter tolerance of every thread within 4.5 % of 90·P^0.4·d^0.1', () => {
    const steps = [0.99, 1.4, 2.8, 5.6, 11.2, 22.4, 45, 90];
    for (const thread of THREADS.filter(({ system }) => system === 'ISO')) {
      const { by, min = NaN, max = NaN } = threadLimits(thread, '6g', 'pitch');
      const step = steps.findIndex((upTo) => thread.printed.major <= upTo);
      const mean = Math.sqrt((steps[step - 1] ?? NaN) * (steps[step] ?? NaN));
      const formula = 90 * thread.printed.pitch ** 0.4 * mean ** 0.1;
      expect(by, thread.name).toBe('table');
      expect(Math.abs(((max - min) * 1e6) / formula - 1), thread.name).toBeLessThan(0.045);
    }
  });
});

describe('limits of every thread', () => {
  it.each(THREADS.map((thread) => [thread.name, thread] as const))(
    '%s: screw and nut never bind',
    (_, thread) => {
      const [screw, nut] = thread.system === 'UN' ? (['2A', '2B'] as const) : (['6g', '6H'] as const);
      const major = threadLimits(thread, screw, 'major');
      const pitch = threadLimits(thread, screw, 'pitch');
      const hole = threadLimits(thread, nut, 'major');
      expect(major.max).toBeLessThan(hole.min ?? NaN);
      expect(major.min).toBeLessThan(major.max ?? NaN);
      expect(pitch.max).toBeLessThan(pitchDiameter(thread));
      expect(pitch.min).toBeLessThan(pitch.max ?? NaN);
      if (thread.system === 'ISO' && thread.printed.pitch < 0.3) return;
      const minor = threadLimits(thread, nut, 'minor');
      const bore = threadLimits(thread, nut, 'pitch');
      expect(minor.min).toBeGreaterThan(minorDiameter(thread) - 0.00051 * 0.0254);
      expect(minor.max).toBeGreaterThan(minor.min ?? NaN);
      expect(minor.max).toBeLessThan(bore.min ?? NaN);
      expect(bore.max).toBeGreaterThan(bore.min ?? NaN);
      expect(bore.min).toBeGreaterThan(pitch.max ?? NaN);
    },
  );

  it('refuses a class of the other system and a limit that the class leaves open', () => {
    expect(() => threadLimits(findThread('M6'), '2B', 'minor')).toThrow('6g or 6H');
    expect(() => threadLimits(findThread('1/4-20'), '6H', 'minor')).toThrow('2A or 2B');
    expect(() => threadLimits(findThread('M6'), '6g', 'minor')).toThrow('minor');
    expect(() => threadLimits(findThread('M1'), '6H', 'minor')).toThrow('grade 6');
    expect(threadLimits(findThread('M6'), '6H', 'major').max).toBeUndefined();
  });

  it('says whether table or formula answered', () => {
    const answered = THREAD_CLASSES.map(
      (of) => threadLimits(findThread(of.startsWith('2') ? '1/4-20' : 'M6'), of, 'pitch').by,
    );
    expect(answered).toEqual(['formula', 'formula', 'table', 'table']);
  });
});

import { unit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { AmbiguousName, UnknownName } from '../../src/tables/names';
import { findThread } from '../../src/tables/threadName';
import {
  minorDiameter,
  pitchDiameter,
  stressArea,
  THREADS,
  type ThreadSeries,
} from '../../src/tables/threads';

const inches = (metres: number) => metres / 0.0254;
const names = (given: string): readonly string[] => {
  try {
    return [findThread(given).name];
  } catch (error) {
    if (error instanceof AmbiguousName) return error.choices;
    if (error instanceof UnknownName) return error.nearest;
    throw error;
  }
};

describe('every thread of the tables', () => {
  it('has a designation of its own, also without its series', () => {
    const plain = THREADS.map(({ name }) => name.replace(/ .*/, ''));
    expect(new Set(plain).size).toBe(THREADS.length);
  });

  it.each(THREADS.map((thread) => [thread.name, thread] as const))(
    '%s is read back from its name',
    (name, thread) => {
      expect(findThread(name)).toBe(thread);
      expect(findThread(name.replace(/ UN.*/, '').toLowerCase())).toBe(thread);
    },
  );

  it.each(THREADS.map((thread) => [thread.name, thread] as const))(
    '%s has a thread that fits its bar',
    (_, thread) => {
      expect(minorDiameter(thread)).toBeGreaterThan(thread.major / 2);
      expect(pitchDiameter(thread)).toBeGreaterThan(minorDiameter(thread));
      expect(thread.major / thread.pitch).toBeGreaterThan(3.9);
      expect(thread.tpi * thread.pitch).toBeCloseTo(0.0254, 15);
      // mathjs, a general-purpose library, reads the same size and converts it.
      const { major } = thread.printed;
      expect(unit(major, thread.system === 'UN' ? 'inch' : 'mm').toNumber('m')).toBeCloseTo(thread.major, 15);
    },
  );

  it.each<[ThreadSeries]>([['UNC'], ['UNF'], ['UNEF'], ['coarse']])(
    'sizes of %s ascend, its pitches never get finer',
    (series) => {
      const rows = THREADS.filter((thread) => thread.series === series);
      rows.slice(1).forEach((thread, i) => {
        expect(thread.major).toBeGreaterThan(rows[i]?.major ?? NaN);
        expect(thread.pitch).toBeGreaterThanOrEqual((rows[i]?.pitch ?? NaN) - 1e-12);
      });
    },
  );

  it('is finer than the coarse thread of its size when it is called fine', () => {
    for (const fine of THREADS.filter(({ series }) => series === 'fine')) {
      const coarse = THREADS.find(({ series, major }) => series === 'coarse' && major === fine.major);
      expect(fine.pitch, fine.name).toBeLessThan(coarse?.pitch ?? 0);
    }
  });
});

describe('designations as people write them', () => {
  it.each([
    ['10-32', '#10-32 UNF'],
    ['#10-32 UNF', '#10-32 UNF'],
    ['No. 10-24', '#10-24 UNC'],
    ['no 10 - 24', '#10-24 UNC'],
    ['#10 UNF', '#10-32 UNF'],
    ['.190-32', '#10-32 UNF'],
    ['1/4-20', '1/4-20 UNC'],
    ['1/4-20unc', '1/4-20 UNC'],
    ['1/4-20 UNC-2B', '1/4-20 UNC'],
    ['1/4"-20', '1/4-20 UNC'],
    ['.250-20', '1/4-20 UNC'],
    ['0.25-20', '1/4-20 UNC'],
    ['1/4 x 28', '1/4-28 UNF'],
    ['.312-18', '5/16-18 UNC'],
    ['1 1/4-7', '1-1/4-7 UNC'],
    ['1-1/4-7', '1-1/4-7 UNC'],
    ['1.25-7', '1-1/4-7 UNC'],
    ['1½-6', '1-1/2-6 UNC'],
    ['1-8', '1-8 UNC'],
    ['1-64', '#1-64 UNC'],
    ['2-4.5', '2-4.5 UNC'],
    ['M6', 'M6'],
    ['m6', 'M6'],
    ['M6x1', 'M6'],
    ['M6 x 1.0', 'M6'],
    ['M6-6H', 'M6'],
    ['M6x1 - 6g', 'M6'],
    ['M10', 'M10'],
    ['M10 × 1.25', 'M10x1.25'],
    ['M10*1.25', 'M10x1.25'],
    ['M10x1,25', 'M10x1.25'],
    ['MF10x1.25', 'M10x1.25'],
    ['M10–1.25', 'M10x1.25'],
    ['MF6', 'M6x0.75'],
  ])('%s is %s', (given, name) => {
    expect(findThread(given).name).toBe(name);
  });

  it.each([
    ['1/4', ['1/4-20 UNC', '1/4-28 UNF', '1/4-32 UNEF']],
    ['0.25', ['1/4-20 UNC', '1/4-28 UNF', '1/4-32 UNEF']],
    ['10', ['#10-24 UNC', '#10-32 UNF', 'M10']],
    ['#10', ['#10-24 UNC', '#10-32 UNF']],
    ['MF8', ['M8x1', 'M8x0.75']],
  ])('%s alone is refused by naming %s', (given, choices) => {
    expect(() => findThread(given)).toThrow(AmbiguousName);
    expect(names(given)).toEqual(choices);
  });

  it.each([
    ['1/4-21', '1/4-20 UNC'],
    ['10-33', '#10-32 UNF'],
    ['#11-32', '#12-32 UNEF'],
    ['1/4-20 UNF', '1/4-20 UNC'],
    ['M10x1.3', 'M10x1.25'],
    ['M15', 'M16'],
    ['16', 'M16'],
    ['MF6x1', 'M6'],
  ])('%s is answered with three threads, first %s', (given, first) => {
    expect(() => findThread(given)).toThrow(UnknownName);
    expect(names(given)).toHaveLength(3);
    expect(names(given)[0]).toBe(first);
  });

  it.each(['', 'thread', '1/0-20', 'M', '-20', '1/4-0'])('"%s" is refused', (given) => {
    expect(() => findThread(given)).toThrow(UnknownName);
  });
});

describe('basic dimensions', () => {
  // ASME B1.1-2019 rows as listed in an open thread table (denavit/ScrewThreadLib): basic pitch and minor diameter, in.
  it.each([
    ['10-24', 0.1629, 0.1449],
    ['10-32', 0.1697, 0.1562],
    ['1/4-20', 0.2175, 0.1959],
    ['1/4-28', 0.2268, 0.2113],
    ['1/2-13', 0.45, 0.4167],
    ['3/4-16', 0.7094, 0.6823],
    ['1-12', 0.9459, 0.9098],
  ])('%s has the pitch and minor diameter of ASME B1.1', (given, pitch, minor) => {
    expect(inches(pitchDiameter(findThread(given)))).toBeCloseTo(pitch, 4);
    expect(inches(minorDiameter(findThread(given)))).toBeCloseTo(minor, 4);
  });

  // ISO 724, from memory: D2 and D1, mm.
  it.each([
    ['M3', 2.675, 2.459],
    ['M6', 5.35, 4.917],
    ['M8', 7.188, 6.647],
    ['M10x1.25', 9.188, 8.647],
    ['M12', 10.863, 10.106],
    ['M20', 18.376, 17.294],
    ['M36', 33.402, 31.67],
  ])('%s has the pitch and minor diameter of ISO 724', (given, pitch, minor) => {
    expect(Math.abs(pitchDiameter(findThread(given)) * 1000 - pitch)).toBeLessThan(0.00051);
    expect(Math.abs(minorDiameter(findThread(given)) * 1000 - minor)).toBeLessThan(0.00051);
  });

  // ISO 898-1 load tables (slsbearings.com/slsbnn/tensile-strength.html; M12 also Shigley Table 8-1), mm².
  it.each([
    ['M3', 5.03],
    ['M4', 8.78],
    ['M5', 14.2],
    ['M6', 20.1],
    ['M8', 36.6],
    ['M10', 58],
    ['M12', 84.3],
    ['M16', 157],
    ['M20', 245],
  ])('%s has the stress area of ISO 898-1', (given, area) => {
    expect(Math.abs((stressArea(findThread(given)) * 1e6) / area - 1)).toBeLessThan(0.003);
  });

  // FED-STD-H28/2B table values for 1/4-20 and 1/2-13; the others Shigley Table 8-2 from memory, in².
  it.each([
    ['1/4-20', 0.0318],
    ['1/2-13', 0.1419],
    ['10-32', 0.02],
    ['5/16-18', 0.0524],
    ['1-8', 0.606],
  ])('%s has the stress area of the unified standard', (given, area) => {
    expect(Math.abs(stressArea(findThread(given)) / 0.0254 ** 2 / area - 1)).toBeLessThan(0.003);
  });
});

import { describe, expect, it } from 'vitest';
import { UnknownName } from '../../src/tables/names';
import { findDrill } from '../../src/tables/drillName';
import { DRILLS, drillsOf, nearestDrill } from '../../src/tables/drills';
import { ISO_2306_THREADS, isoTapDrill } from '../../src/tables/tapDrillsMetric';
import { threadLimits } from '../../src/tables/threadLimits';
import { findThread } from '../../src/tables/threadName';
import { FULL_THREAD, THREADS } from '../../src/tables/threads';

const inch = 0.0254;

describe('every drill of the tables', () => {
  it('has a name of its own that finds it', () => {
    expect(new Set(DRILLS.map(({ name }) => name)).size).toBe(DRILLS.length);
    for (const drill of DRILLS) expect(findDrill(drill.name)).toBe(drill);
  });

  it.each(['number', 'letter', 'fraction', 'metric'] as const)(
    'is larger than the one before in the %s series',
    (series) => {
      const sizes = drillsOf(series).map(({ diameter }) => diameter);
      sizes.slice(1).forEach((size, i) => {
        expect(size).toBeGreaterThan(sizes[i] ?? Infinity);
      });
    },
  );

  it('belongs to a series of the right length', () => {
    expect(drillsOf('number')).toHaveLength(80);
    expect(drillsOf('letter')).toHaveLength(26);
    expect(drillsOf('fraction').at(-1)?.diameter).toBeCloseTo(2.25 * inch, 12);
    expect(drillsOf('metric').at(-1)?.diameter).toBeGreaterThanOrEqual(0.032);
  });

  it('gets smaller as its number grows and larger as its letter does', () => {
    const number = (n: number) => findDrill(`#${n}`).diameter;
    for (let n = 1; n < 80; n++) expect(number(n), `#${n}`).toBeGreaterThan(number(n + 1));
    const letters = Array.from('ABCDEFGHIJKLMNOPQRSTUVWXYZ', (letter) => findDrill(letter).diameter);
    expect(letters).toEqual([...letters].sort((a, b) => a - b));
  });
});

describe('ASME B94.11M sizes', () => {
  // From memory of the standard; also in the open list gumyr/cq_warehouse drill_sizes.csv. Inches.
  it.each([
    ['#1', 0.228],
    ['#7', 0.201],
    ['#21', 0.159],
    ['#29', 0.136],
    ['#36', 0.1065],
    ['#43', 0.089],
    ['#50', 0.07],
    ['#60', 0.04],
    ['#61', 0.039],
    ['#69', 0.0292],
    ['#80', 0.0135],
    ['A', 0.234],
    ['E', 0.25],
    ['F', 0.257],
    ['I', 0.272],
    ['Q', 0.332],
    ['U', 0.368],
    ['Z', 0.413],
    ['7/32', 0.21875],
    ['1-33/64', 1.515625],
    ['1-49/64', NaN],
    ['2-1/32', 2.03125],
    ['1-31/64', 1.484375],
  ])('%s is %d in', (name, size) => {
    if (Number.isNaN(size)) expect(() => findDrill(name)).toThrow(UnknownName);
    else expect(findDrill(name).diameter / inch).toBeCloseTo(size, 12);
  });
});

describe('drill names as people write them', () => {
  it.each([
    ['#21', '#21'],
    ['# 21', '#21'],
    ['No. 7', '#7'],
    ['no 7', '#7'],
    ['number 7', '#7'],
    ['wire 80', '#80'],
    ['f', 'F'],
    ['letter F', 'F'],
    ['7/32 in', '7/32'],
    ['1 1/4', '1-1/4'],
    ['1 in', '1 in'],
    ['1"', '1 in'],
    ['5mm', '5.0 mm'],
    ['5.0 mm', '5.0 mm'],
    ['2.05 MM', '2.05 mm'],
    ['0.201', '#7'],
    ['21', '#21'],
    ['#07', '#7'],
    ['14/64', '7/32'],
    ['5/8 drill', '5/8'],
    ['.250', '1/4'],
  ])('%s is %s', (given, name) => {
    expect(findDrill(given).name).toBe(name);
  });

  it.each([
    ['#81', '#80'],
    ['5.05 mm', '5.1 mm'],
    ['0.2', '#8'],
    ['3.3', '3.3 mm'],
    ['5.5', '5.5 mm'],
    ['AB', 'A'],
  ])('%s is answered with the nearest, among them %s', (given, near) => {
    expect(() => findDrill(given)).toThrow(UnknownName);
    expect(() => findDrill(given)).toThrow(near);
  });
});

describe('the nearest drill', () => {
  it('is the drill itself for its own diameter, in any series that holds it', () => {
    for (const drill of DRILLS) {
      for (const round of ['nearest', 'up', 'down'] as const) {
        expect(nearestDrill(drill.diameter, drill.series, round)).toBe(drill);
      }
    }
  });

  it.each([
    [0.2 * inch, 'number', 'down', '#8'],
    [0.2 * inch, 'number', 'up', '#7'],
    [0.27 * inch, 'letter', 'nearest', 'I'],
    [0.00502, 'metric', 'up', '5.1 mm'],
    [0.00502, 'metric', 'nearest', '5.0 mm'],
    [0.25 * inch, 'all', 'nearest', '1/4'],
    [0.2501 * inch, 'inch', 'down', '1/4'],
    [0.25 * inch, 'letter', 'nearest', 'E'],
    [0.1 * inch, 'letter', 'up', 'A'],
  ] as const)('of %d m in %s, %s, is %s', (diameter, series, round, name) => {
    expect(nearestDrill(diameter, series, round).name).toBe(name);
  });

  it('is never the last one of a series for a hole beyond it', () => {
    expect(() => nearestDrill(0.42 * inch, 'letter')).toThrow('Z');
    expect(() => nearestDrill(0.42 * inch, 'letter', 'down')).toThrow('larger');
    expect(() => nearestDrill(0.2 * inch, 'letter')).toThrow('smaller');
    expect(() => nearestDrill(0.2, 'all')).toThrow('larger');
  });

  it('is at most half a step away, whatever the diameter', () => {
    for (let i = 1; i <= 500; i++) {
      const diameter = 0.0135 * inch + i * 5e-5;
      const drill = nearestDrill(diameter);
      const away = Math.min(...DRILLS.map((other) => Math.abs(other.diameter - diameter)));
      expect(Math.abs(drill.diameter - diameter)).toBeCloseTo(away, 12);
    }
  });
});

describe('drills of ISO 2306', () => {
  it('belong to threads of the tables, every coarse one to M56 among them', () => {
    for (const name of ISO_2306_THREADS) expect(findThread(name).name).toBe(name);
    const coarse = THREADS.filter(({ series, printed }) => series === 'coarse' && printed.major <= 56);
    for (const { name } of coarse) expect(ISO_2306_THREADS).toContain(name);
  });

  it.each(ISO_2306_THREADS.map((name) => [name]))(
    '%s: a stocked drill within the minor diameter limits of the nut',
    (name) => {
      const thread = findThread(name);
      const drill = isoTapDrill(thread);
      expect(drill?.series).toBe('metric');
      const hole = drill?.diameter ?? NaN;
      const percent = ((thread.major - hole) / (FULL_THREAD * thread.pitch)) * 100;
      expect(percent).toBeGreaterThan(70);
      expect(percent).toBeLessThan(83.4);
      if (thread.printed.pitch < 0.3) return;
      const { min = NaN, max = NaN } = threadLimits(thread, '6H', 'minor');
      expect(hole).toBeGreaterThan(min - 1e-9);
      expect(hole).toBeLessThan(max + 1e-9);
    },
  );

  // Read on a public question page (M4 to M10); M22 from memory of ISO 2306: an open list has 18.5, below the nut's limits.
  it.each([
    ['M4', '3.3 mm'],
    ['M5', '4.2 mm'],
    ['M6', '5.0 mm'],
    ['M8', '6.8 mm'],
    ['M10', '8.5 mm'],
    ['M12', '10.2 mm'],
    ['M22', '19.5 mm'],
  ])('%s takes %s', (thread, drill) => {
    expect(isoTapDrill(findThread(thread))?.name).toBe(drill);
  });

  it('has none for inch threads', () => {
    expect(isoTapDrill(findThread('1/4-20'))).toBeUndefined();
  });
});

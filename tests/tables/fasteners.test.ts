import { describe, expect, it } from 'vitest';
import {
  CLEARANCE_FITS,
  clearanceHole,
  dowel,
  DOWELS,
  EJECTOR_PINS,
  findStrengthClass,
  shoulderScrew,
  SHOULDER_SCREWS,
  socketHead,
  STRENGTH_CLASSES,
  strengthOf,
} from '../../src/tables/fasteners';
import { UnknownName } from '../../src/tables/names';
import { findThread } from '../../src/tables/threadName';
import { stressArea, THREADS } from '../../src/tables/threads';

const heads = THREADS.flatMap((thread) => {
  try {
    return [{ thread, ...socketHead(thread) }];
  } catch {
    return [];
  }
});
const mm = (metres: number) => Number((metres * 1000).toFixed(4));
const inches = (metres: number) => Number((metres / 0.0254).toFixed(5));

describe('socket head cap screws', () => {
  it.each(heads.map((head) => [head.thread.name, head] as const))(
    '%s: hole, head, hexagon and bore go together',
    (_, head) => {
      const { thread } = head;
      expect(head.hex).toBeLessThan(head.head);
      expect(head.head).toBeGreaterThan(thread.major * 1.25);
      expect(head.bore).toBeGreaterThan(head.head);
      expect(head.boreDepth).toBeGreaterThan(head.height);
      expect(head.height).toBe(thread.major);
      const close = clearanceHole(thread, 'close').diameter;
      const normal = clearanceHole(thread, 'normal').diameter;
      expect(close).toBeGreaterThan(thread.major);
      expect(normal).toBeGreaterThan(close);
      expect(normal).toBeLessThan(head.head);
    },
  );

  it('are there for every ISO 4762 size to M36 and every ASME B18.3 size to 1 in', () => {
    const of = (system: string) =>
      heads.filter(({ thread }) => thread.system === system).map(({ thread }) => thread.major);
    expect(new Set(of('ISO')).size).toBe(16);
    expect(new Set(of('UN')).size).toBe(18);
  });

  // ISO 4762 from memory (knurled head, hexagon), DIN 974-1 from memory.
  it('M6: head 10.22, hexagon 5, bore 11 and 6.4 deep', () => {
    const { head, hex, bore, boreDepth } = socketHead(findThread('M6'));
    expect([head, hex, bore, boreDepth].map(mm)).toEqual([10.22, 5, 11, 6.4]);
  });

  // ASME B18.3 from memory.
  it('1/4: head 3/8, hexagon 3/16, bore 7/16, also for the fine thread', () => {
    const { head, hex, bore } = socketHead(findThread('1/4-28'));
    expect([head, hex, bore].map(inches)).toEqual([0.375, 0.1875, 0.4375]);
  });

  it('refuse a size without one by naming its neighbours', () => {
    expect(() => socketHead(findThread('M7'))).toThrow('M6, M8');
    expect(() => socketHead(findThread('9/16-12'))).toThrow('1/2, 5/8');
  });
});

describe('clearance holes', () => {
  // ISO 273 as listed at engineeringhardware.com, and from memory: close, normal, loose, mm.
  it.each([
    ['M3', 3.2, 3.4, 3.6],
    ['M4', 4.3, 4.5, 4.8],
    ['M6', 6.4, 6.6, 7],
    ['M8', 8.4, 9, 10],
    ['M10', 10.5, 11, 12],
    ['M12', 13, 13.5, 14.5],
    ['M14', 15, 15.5, 16.5],
    ['M16', 17, 17.5, 18.5],
  ])('%s', (name, ...holes) => {
    expect(CLEARANCE_FITS.map((fit) => mm(clearanceHole(findThread(name), fit).diameter))).toEqual(holes);
  });

  it('are refused for what the tables do not have', () => {
    expect(clearanceHole(findThread('1/4-20'), 'loose').diameter / 0.0254).toBeCloseTo(19 / 64, 9);
    expect(() => clearanceHole(findThread('M9'), 'normal')).toThrow(UnknownName);
  });
});

describe('shoulder screws', () => {
  it.each(SHOULDER_SCREWS.map((screw) => [screw.thread, screw] as const))(
    'with %s: shoulder over thread, under head',
    (thread, screw) => {
      expect(shoulderScrew(screw.shoulder)).toBe(screw);
      expect(screw.shoulderMax).toBeLessThan(screw.shoulder);
      expect(screw.shoulderMin).toBeLessThan(screw.shoulderMax);
      expect(findThread(thread).system).toBe(screw.system);
      expect(findThread(thread).major).toBeLessThan(screw.shoulderMin);
      expect(screw.head).toBeGreaterThan(screw.shoulder * 1.2);
      expect(screw.hex).toBeLessThan(screw.shoulder);
    },
  );

  // ISO 7379 shoulder limits read at fullerkr.com/pages/iso-7379-dimensions.
  it('10 mm is 9.951 to 9.987', () => {
    const { shoulderMin, shoulderMax } = shoulderScrew(0.01);
    expect([mm(shoulderMin), mm(shoulderMax)]).toEqual([9.951, 9.987]);
  });

  it('of a size outside both standards is refused with the nearest', () => {
    expect(() => shoulderScrew(0.012)).toThrow('13 mm');
    expect(() => shoulderScrew(0.006)).toThrow('6.5 mm');
  });
});

describe('ground pins', () => {
  it('dowels are over size, ejector pins under, by no more than their tolerances', () => {
    for (const pin of DOWELS) {
      expect(dowel(pin.diameter)).toBe(pin);
      expect(pin.min).toBeGreaterThan(pin.diameter);
      expect(pin.max).toBeGreaterThan(pin.min);
      expect(pin.max - pin.diameter).toBeLessThan(25e-6);
    }
    for (const pin of EJECTOR_PINS) {
      expect(pin.max).toBeLessThan(pin.diameter);
      expect(pin.min).toBeLessThan(pin.max);
      expect(pin.head).toBeGreaterThan(pin.diameter);
    }
    expect(() => dowel(0.0071)).toThrow(/nearest: .*8 mm/);
  });

  // m6 and g6 limits of ISO 286-2 from memory.
  it('8 mm: dowel 8.006 to 8.015, ejector pin 7.986 to 7.995', () => {
    const pin = dowel(0.008);
    expect([mm(pin.min), mm(pin.max)]).toEqual([8.006, 8.015]);
    const ejector = EJECTOR_PINS.find(({ diameter }) => diameter === 0.008);
    expect([mm(ejector?.min ?? NaN), mm(ejector?.max ?? NaN)]).toEqual([7.986, 7.995]);
  });
});

describe('strength classes', () => {
  it.each(STRENGTH_CLASSES.map((row) => [row.name, row] as const))(
    '%s: proof below yield below tensile',
    (name, row) => {
      expect(findStrengthClass(name)).toBe(row);
      for (const [upTo] of row.bands) {
        const { proof, yield: limit, tensile } = strengthOf(row, row.metric ? upTo / 1000 : upTo * 0.0254);
        expect(proof).toBeLessThan(limit);
        expect(limit).toBeLessThan(tensile);
        expect(proof / tensile).toBeGreaterThan(0.68);
      }
    },
  );

  // Class number: tensile in hundreds of MPa, and yield over tensile in tenths (ISO 898-1).
  it.each(['4.8', '8.8', '10.9', '12.9'])('%s says its own strength', (name) => {
    const { yield: limit, tensile } = strengthOf(findStrengthClass(name), 0.01);
    const [hundreds, tenths] = name.split('.').map(Number);
    expect(Math.abs(tensile / 1e8 / (hundreds ?? NaN) - 1)).toBeLessThan(0.06);
    expect(Math.abs((limit / tensile) * 10 - (tenths ?? NaN))).toBeLessThan(0.15);
  });

  // ISO 898-1 proof loads at slsbearings.com/slsbnn/tensile-strength.html; SAE J429 grade 5 proof 85 ksi on 0.0318 in².
  it.each([
    ['M6', '8.8', 11600],
    ['M8', '8.8', 21200],
    ['M10', '12.9', 56300],
    ['1/4-20', 'grade 5', 2703 * 4.4482216152605],
  ])('%s %s holds %d N', (thread, name, load) => {
    const screw = findThread(thread);
    expect(
      Math.abs((strengthOf(findStrengthClass(name), screw.major).proof * stressArea(screw)) / load - 1),
    ).toBeLessThan(0.007);
  });

  it('changes with size and ends where the standard does', () => {
    expect(strengthOf(findStrengthClass('8.8'), 0.016).proof).toBe(580e6);
    expect(strengthOf(findStrengthClass('8.8'), 0.018).proof).toBe(600e6);
    expect(() => strengthOf(findStrengthClass('grade 2'), 0.0254)).toThrow('0.75 in');
    expect(() => findStrengthClass('9.8')).toThrow('8.8');
  });
});

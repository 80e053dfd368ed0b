import { describe, expect, it } from 'vitest';
import { CellError, type CellValue } from '../../src/cells/value';
import { drillNearest } from '../../src/catalogue/drill/nearest';
import { drillPointLength } from '../../src/catalogue/drill/point';
import { drillSize } from '../../src/catalogue/drill/size';
import { tapDepth } from '../../src/catalogue/tap/depth';
import { tapDrill } from '../../src/catalogue/tap/drill';
import { tapDrillName } from '../../src/catalogue/tap/drillName';
import { tapFeed } from '../../src/catalogue/tap/feed';
import { tapPercent } from '../../src/catalogue/tap/percent';
import { tapTorque } from '../../src/catalogue/tap/torque';
import { tapTravel } from '../../src/catalogue/tap/travel';
import { threadEngage } from '../../src/catalogue/thread/engage';
import { threadLimit } from '../../src/catalogue/thread/limit';
import { threadStrip } from '../../src/catalogue/thread/strip';
import { threadValue } from '../../src/catalogue/thread/value';
import type { Definition } from '../../src/core/define';
import { evaluate } from '../../src/core/evaluate';
import { DRILLS, drillsOf } from '../../src/tables/drills';
import { THREADS } from '../../src/tables/threads';
import { ask, askNumber } from '../support/ask';
import { valuesOf } from '../support/runCheck';

const refusal = (definition: Definition, ...args: CellValue[]): CellError => {
  const cell = ask(definition, ...args);
  if (cell instanceof CellError) return cell;
  throw new Error(`${String(cell)} instead of a refusal`);
};
/** What the check says of these inputs. */
const outside = (definition: Definition, given: Record<string, string | number>): string =>
  evaluate(definition, valuesOf(definition, { given, expect: 0, from: '' }), 'mm').outside.join(' ');
const shown = (definition: Definition, given: Record<string, string | number>, symbol: string) =>
  evaluate(definition, valuesOf(definition, { given, expect: 0, from: '' }), 'mm').steps.find(
    (step) => step.symbol === symbol,
  )?.value;

const millimetres = (thread: string, of: string, property: string, which: string) =>
  Number(askNumber(threadLimit, thread, of, property, which, 'mm').toFixed(6));
const inches = (thread: string, of: string, property: string, which: string) =>
  Number(askNumber(threadLimit, thread, of, property, which, 'in').toFixed(6));

describe('THREAD.LIMIT has the printed limits', () => {
  // ASME B1.1 table of limits at efunda.com/DesignStandards/screws/unified.cfm, inches: screw 2A major and pitch, nut 2B minor and
  // pitch, each max, min.
  it.each([
    ['0-80', 0.0595, 0.0563, 0.0514, 0.0496, 0.0514, 0.0465, 0.0542, 0.0519],
    ['1-64', 0.0724, 0.0686, 0.0623, 0.0603, 0.0623, 0.0561, 0.0655, 0.0629],
    ['1-72', 0.0724, 0.0689, 0.0634, 0.0615, 0.0635, 0.058, 0.0665, 0.064],
    ['2-56', 0.0854, 0.0813, 0.0738, 0.0717, 0.0737, 0.0667, 0.0772, 0.0744],
    ['2-64', 0.0854, 0.0816, 0.0753, 0.0733, 0.0753, 0.0691, 0.0786, 0.0759],
    ['3-48', 0.0983, 0.0938, 0.0848, 0.0825, 0.0845, 0.0764, 0.0885, 0.0855],
  ])('of %s in ASME B1.1', (thread, ...row) => {
    const found = [
      ['2A', 'major'],
      ['2A', 'pitchdia'],
      ['2B', 'minor'],
      ['2B', 'pitchdia'],
    ].flatMap(([of = '', property = '']) =>
      ['max', 'min'].map((which) => inches(thread, of, property, which)),
    );
    expect(found).toEqual(row);
  });

  // M1.6 to M6 by two tables, which agree: ASME B1.13M at amesweb.info/screws/metric-thread-chart.aspx (without M1.8), and ISO 965 at
  // mastik.pt, p. 711. M10 at obliczenia.icad.pl. Major and pitch, max and min, mm.
  it.each([
    ['M1.6', 1.581, 1.496, 1.354, 1.291],
    ['M1.8', 1.781, 1.696, 1.554, 1.491],
    ['M2', 1.981, 1.886, 1.721, 1.654],
    ['M2.5', 2.48, 2.38, 2.188, 2.117],
    ['M3', 2.98, 2.874, 2.655, 2.58],
    ['M3.5', 3.479, 3.354, 3.089, 3.004],
    ['M4', 3.978, 3.838, 3.523, 3.433],
    ['M5', 4.976, 4.826, 4.456, 4.361],
    ['M6', 5.974, 5.794, 5.324, 5.212],
    ['M10', 9.968, 9.732, 8.994, 8.862],
  ])('of the screw %s 6g in ISO 965', (thread, ...row) => {
    const found = ['major', 'pitchdia'].flatMap((property) =>
      ['max', 'min'].map((which) => millimetres(thread, '6g', property, which)),
    );
    expect(found).toEqual(row);
  });

  // UNI 4535 table of ISO 6H nuts, as in a guide to taps of 2022 (docs.steelcam.org): pitch diameter min and max, mm.
  it.each([
    ['M1.6', 1.373, 1.458],
    ['M2', 1.74, 1.83],
    ['M2.5', 2.208, 2.303],
    ['M3', 2.675, 2.775],
    ['M3.5', 3.11, 3.222],
    ['M4', 3.545, 3.663],
    ['M4.5', 4.013, 4.131],
    ['M5', 4.48, 4.605],
    ['M6', 5.35, 5.5],
    ['M7', 6.35, 6.5],
    ['M8', 7.188, 7.348],
    ['M9', 8.188, 8.348],
    ['M10', 9.026, 9.206],
    ['M11', 10.026, 10.206],
    ['M12', 10.863, 11.063],
    ['M14', 12.701, 12.913],
    ['M16', 14.701, 14.913],
    ['M18', 16.376, 16.6],
  ])('of the hole %s 6H', (thread, min, max) => {
    expect(millimetres(thread, '6H', 'pitchdia', 'min')).toBe(min);
    expect(millimetres(thread, '6H', 'pitchdia', 'max')).toBe(max);
  });

  // Catalogue page of forming taps with the 6H limits (publications.dgisupply.com, 2024): minor diameter, mm.
  it.each([
    ['M1.6', 1.221, 1.321],
    ['M2', 1.567, 1.679],
    ['M2.5', 2.013, 2.138],
    ['M3', 2.459, 2.599],
    ['M3x0.35', 2.621, 2.721],
    ['M3.5', 2.85, 3.01],
  ])('of the minor diameter of %s 6H', (thread, min, max) => {
    expect(millimetres(thread, '6H', 'minor', 'min')).toBe(min);
    expect(millimetres(thread, '6H', 'minor', 'max')).toBe(max);
  });

  it('and says whether the table or the formula answered', () => {
    const limit = { property: 'minor', which: 'max' };
    expect(shown(threadLimit, { thread: 'M6', class: '6H', ...limit }, 'by')).toContain('table');
    expect(shown(threadLimit, { thread: '1/4-20', class: '2B', ...limit }, 'by')).toContain('formula');
  });

  it('and refuses what a class leaves open by naming the argument', () => {
    expect(refusal(threadLimit, '1/4-20', '2B', 'major', 'max').message).toMatch(/^which is max.*2B/);
    expect(refusal(threadLimit, 'M6', '6g', 'minor', 'max').message).toMatch(/^property .*6g/);
    expect(refusal(threadLimit, 'M6', '2A', 'major', 'max').message).toMatch(/^class .*6g or 6H/);
    expect(refusal(threadLimit, 'M1', '6H', 'minor', 'max').message).toMatch(/^class .*grade 6/);
  });
});

describe('THREAD.VALUE', () => {
  // Unified threads at boltport.com/threads/unf: pitch diameter, minor diameter of the hole, stress area, inches.
  it.each([
    ['0-80', 0.0519, 0.0465, 0.0018],
    ['4-48', 0.0985, 0.0894, 0.00661],
    ['8-36', 0.146, 0.1339, 0.01474],
    ['10-32', 0.1697, 0.1562, 0.02],
    ['1/4-28', 0.2268, 0.2113, 0.0364],
    ['3/8-24', 0.3479, 0.3299, 0.0878],
    ['7/16-20', 0.405, 0.3834, 0.1187],
    ['5/8-18', 0.5889, 0.5649, 0.256],
    ['3/4-16', 0.7094, 0.6823, 0.373],
    ['1-12', 0.9459, 0.9098, 0.663],
    ['1-1/2-12', 1.4459, 1.4098, 1.581],
  ])('of %s', (thread, pitch, minor, area) => {
    expect(Math.abs(askNumber(threadValue, thread, 'pitchdia') - pitch)).toBeLessThan(0.000051);
    expect(Math.abs(askNumber(threadValue, thread, 'minor') - minor)).toBeLessThan(0.000051);
    expect(Math.abs(askNumber(threadValue, thread, 'stressarea') / area - 1)).toBeLessThan(0.003);
  });

  it('gives the pitch in the other system too', () => {
    expect(askNumber(threadValue, 'M6', 'pitch', 'in')).toBeCloseTo(1 / 25.4, 12);
    expect(askNumber(threadValue, '1/4-20', 'pitch', 'mm')).toBeCloseTo(1.27, 12);
    expect(askNumber(threadValue, 'M6', 'tpi')).toBeCloseTo(25.4, 12);
  });
});

describe('shear areas at minimum material', () => {
  // Table of stress and shear areas of M threads with one diameter engaged, 6H/6g: Bickford, Introduction to the Design and Behavior
  // of Bolted Joints, at engineersedge.com/hardware/metric_thread_stress_and_shear_areas_table_15797.htm. Stress area, area of the
  // bolt's thread, of the nut's, mm². (The pitches of M8 and M12 are misprinted there.)
  it.each([
    ['M5', 14.183, 35.366, 49.994],
    ['M6', 20.123, 51.875, 73.145],
    ['M8', 36.609, 97.29, 134.63],
    ['M10', 57.99, 155.8, 214.77],
    ['M12', 84.267, 227.72, 313.41],
    ['M14', 115.44, 313.94, 434.47],
    ['M16', 156.67, 417.55, 569.12],
    ['M20', 244.79, 665.58, 907.76],
    ['M24', 352.5, 971.1, 1320.2],
    ['M27', 459.41, 1246.7, 1674.3],
    ['M30', 560.59, 1549.2, 2086.5],
    ['M36', 816.72, 2271.5, 3026.2],
    ['M42', 1120.9, 3120.2, 4168.3],
    ['M48', 1473.2, 4119.5, 5482],
    ['M56', 2030, 5680.3, 7510.2],
    ['M64', 2676, 7483.6, 9847.3],
  ])('%s: stress area, screw and hole', (thread, stress, external, internal) => {
    const length = Number(thread.slice(1));
    const area = (which: string) => askNumber(threadStrip, thread, length, 1, which, 'mm');
    expect(Math.abs(askNumber(threadValue, thread, 'stressarea', 'mm') / stress - 1)).toBeLessThan(5e-5);
    expect(Math.abs(area('external') / external - 1)).toBeLessThan(2e-4);
    expect(Math.abs(area('internal') / internal - 1)).toBeLessThan(2e-4);
  });

  it('are near the short forms of FED-STD-H28, 5/8 and 3/4 of the cylinder at the pitch diameter, from 1/4 in up', () => {
    for (const { name, series, printed } of THREADS) {
      if ((series !== 'UNC' && series !== 'UNF') || printed.major < 0.25) continue;
      const cylinder = Math.PI * askNumber(threadValue, name, 'pitchdia') * 0.5;
      const over = (which: string, share: number) =>
        askNumber(threadStrip, name, 0.5, 1, which) / (share * cylinder);
      for (const ratio of [over('external', 0.625), over('internal', 0.75)]) {
        expect(ratio, name).toBeGreaterThan(0.8);
        expect(ratio, name).toBeLessThan(1.25);
      }
    }
  });

  it('say of the finest threads, which have no class 6H, what to change', () => {
    expect(refusal(threadStrip, 'M1', 2, 100, 'internal', 'mm').message).toMatch(
      /^thread is M1,.*6H.*coarser/,
    );
    const left = THREADS.filter(({ name }) => ask(threadStrip, name, 0.25, 1000) instanceof CellError);
    expect(left.every(({ printed, system }) => system === 'ISO' && printed.pitch < 0.3)).toBe(true);
  });

  it('engage so long that the screw breaks first, and no longer', () => {
    for (const thread of ['10-32', '1/4-20', '3/8-24', 'M6', 'M10x1.25']) {
      for (const plate of [60e3, 90e3, 200e3]) {
        const screw = 150e3;
        const length = askNumber(threadEngage, thread, screw, plate);
        const breaks = screw * askNumber(threadValue, thread, 'stressarea');
        const strips = Math.min(
          askNumber(threadStrip, thread, length, plate / 2, 'internal'),
          askNumber(threadStrip, thread, length, screw / 2, 'external'),
        );
        expect(strips / breaks, `${thread} ${plate}`).toBeCloseTo(1, 12);
      }
    }
  });

  it('say where less than a turn or too long a thread is engaged', () => {
    const strip = { thread: 'M6', shearStrength: '200 MPa' };
    expect(outside(threadStrip, { ...strip, engagement: '0.5 mm' })).toContain('one pitch');
    expect(outside(threadStrip, { ...strip, engagement: '20 mm' })).toContain('2.5 diameters');
    expect(outside(threadStrip, { ...strip, engagement: '9 mm' })).toBe('');
  });
});

describe('TAP.DRILL', () => {
  // Inch charts for 75 % of thread on which blackwalnutjigs.com/tapchart.asp, heritageautodata.com and decimaltoinches.pages.dev agree
  // where they overlap (6-32 stands as #35 in the first, as #36 in the others).
  it.each([
    ['0-80', '3/64'], ['1-72', '#53'], ['3-48', '#47'], ['4-40', '#43'], ['4-48', '#42'], ['6-32', '#36'], ['6-40', '#33'],
    ['8-32', '#29'], ['8-36', '#29'], ['10-24', '#25'], ['10-32', '#21'], ['12-24', '#16'], ['12-28', '#14'], ['1/4-20', '#7'],
    ['1/4-28', '#3'], ['1/4-32', '7/32'], ['5/16-18', 'F'], ['3/8-16', '5/16'], ['3/8-24', 'Q'], ['7/16-14', 'U'],
    ['7/16-20', '25/64'], ['1/2-13', '27/64'], ['1/2-20', '29/64'], ['9/16-12', '31/64'], ['9/16-18', '33/64'],
    ['5/8-11', '17/32'], ['5/8-18', '37/64'], ['3/4-10', '21/32'], ['3/4-16', '11/16'],
  ])('of %s is the %s of the charts', (thread, drill) => {
    expect(ask(tapDrillName, thread, null, null, 'inch')).toBe(drill);
  }); // prettier-ignore

  // Metric tap drills for 75 % at utilitiesbunker.com/tools/drill-tap-chart-metric; M12 and M14 are larger in other charts.
  it.each([
    ['M1.6', 1.25], ['M2', 1.6], ['M2.5', 2.05], ['M2.5x0.35', 2.15], ['M3', 2.5], ['M3x0.35', 2.65], ['M3.5', 2.9], ['M4', 3.3],
    ['M4x0.5', 3.5], ['M5', 4.2], ['M5x0.5', 4.5], ['M6', 5], ['M7', 6], ['M8', 6.8], ['M8x1', 7], ['M10', 8.5],
    ['M10x1.25', 8.8], ['M10x1', 9], ['M12', 10.2], ['M12x1.5', 10.5], ['M12x1.25', 10.8], ['M14', 12], ['M14x1.5', 12.5],
    ['M16', 14], ['M16x1.5', 14.5], ['M18', 15.5], ['M18x2', 16], ['M18x1.5', 16.5], ['M20', 17.5], ['M20x2', 18],
    ['M20x1.5', 18.5], ['M22', 19.5], ['M24', 21],
  ])('of %s is the %d mm of ISO 2306', (thread, drill) => {
    expect(askNumber(tapDrill, thread, null, null, null, 'mm')).toBeCloseTo(drill, 9);
  }); // prettier-ignore

  // Forming tap drills by percent (publications.dgisupply.com, 2024), printed to 0.01 mm.
  it.each([
    ['M1.6', 75, 1.42],
    ['M1.6', 55, 1.47],
    ['M3', 75, 2.75],
    ['M3', 70, 2.76],
    ['M3', 65, 2.78],
    ['M3', 60, 2.8],
    ['M3', 55, 2.81],
    ['M3.5', 75, 3.19],
    ['M3.5', 65, 3.23],
  ])('for a forming tap of %s leaves %d %% at %d mm', (thread, percent, drill) => {
    const rounding = (100 * 0.0051) / (0.68 * askNumber(threadValue, thread, 'pitch', 'mm'));
    expect(Math.abs(askNumber(tapPercent, thread, drill, 'form', 'mm') - percent)).toBeLessThan(rounding);
  });

  it('is the nearest of its series for every thread and percent, and leaves what TAP.PERCENT says', () => {
    const sizes = drillsOf('inch').map(({ diameter }) => diameter / 0.0254);
    for (const { name, printed, system } of THREADS) {
      if (system !== 'UN' || printed.major > 1.5) continue;
      for (const percent of [55, 68, 80]) {
        const drill = askNumber(tapDrill, name, percent);
        const ideal = printed.major - 0.01299038106 * percent * printed.pitch;
        const least = Math.min(...sizes.map((size) => Math.abs(size - ideal)));
        expect(Math.abs(drill - ideal), name).toBeLessThanOrEqual(least + 1e-9);
        const called = ask(tapDrillName, name, percent) as string;
        expect(askNumber(drillSize, called)).toBeCloseTo(drill, 12);
        const left = (100 * (printed.major - drill)) / (1.299038106 * printed.pitch);
        expect(askNumber(tapPercent, name, called)).toBeCloseTo(left, 6);
      }
    }
  });

  it('says in its work whether ISO 2306 or the nearest drill answered', () => {
    expect(shown(tapDrill, { thread: 'M6' }, 'by')).toBe('ISO 2306');
    expect(shown(tapDrill, { thread: 'M6', percent: '70 %' }, 'by')).toContain('nearest');
    expect(shown(tapDrill, { thread: 'M6', series: 'inch' }, 'by')).toContain('nearest');
    expect(shown(tapDrill, { thread: 'M24x1.5' }, 'by')).toContain('nearest');
  });

  it('says when the thread is too full for a cutting tap, or the hole beyond its class', () => {
    expect(outside(tapDrill, { thread: 'M6', percent: '95 %' })).toContain('83.3');
    expect(outside(tapPercent, { thread: 'M6', drill: '4.8 mm' })).toContain('83.3');
    expect(outside(tapDrill, { thread: 'M6', percent: '50 %' })).toContain('6H');
    expect(outside(tapDrillName, { thread: '1/4-20', percent: '50 %' })).toContain('2B');
    expect(outside(tapPercent, { thread: '1/4-20', drill: '#7' })).toBe('');
    expect(outside(tapDrill, { thread: 'M1' })).toBe('');
  });

  it('says when the metal that a forming tap raises has no room, or leaves it hollow', () => {
    // The groove of 5/8 H fills the crests from d - 0.609 P: 5.391 mm for M6, by equal areas left and right of the drilled wall.
    const form = { thread: 'M6', kind: 'form' };
    expect(outside(tapPercent, { ...form, drill: '5.38 mm' })).toContain('no room');
    expect(outside(tapPercent, { ...form, drill: '5.4 mm' })).toBe('');
    expect(outside(tapPercent, { ...form, drill: '5.7 mm' })).toContain('hollow');
    expect(outside(tapDrill, { thread: 'M6', kind: 'form' })).toBe('');
  });

  it('is refused where a series has none, and a drill that leaves nothing to cut', () => {
    expect(refusal(tapDrill, 'M64', null, null, 'metric').message).toMatch(
      /^series is metric; it has no drill.*51/,
    );
    expect(refusal(tapDrill, '4-40', null, null, 'letter').message).toContain('smaller');
    expect(refusal(tapPercent, '1/4-20', 7).message).toMatch(/^drill is larger than the thread/);
    expect(refusal(tapPercent, 'M6', '7 mm').message).toMatch(/^drill is larger than the thread/);
    expect(refusal(tapDrill, '1/4').message).toMatch(/^thread .*1\/4-20 UNC, 1\/4-28 UNF or 1\/4-32 UNEF/);
  });
});

describe('depth and travel of a tap', () => {
  it('leave full thread over all that was asked for', () => {
    // The tap as teeth one pitch apart, the first `chamfer` pitches of it not full: where is the deepest full tooth?
    const deepestFull = (tip: number, chamfer: number, pitch: number) => tip - chamfer * pitch;
    for (const [thread, pitch] of [['M6', 1], ['M8', 1.25], ['M10x1.25', 1.25]] as const) {
      for (const chamfer of [1.5, 4, 8]) {
        const travel = askNumber(tapTravel, 20, thread, chamfer, 0, 'mm');
        expect(deepestFull(travel, chamfer, pitch)).toBeCloseTo(20, 12);
        // The drilled cone begins where the tap's end may reach.
        const depth = askNumber(tapDepth, 20, thread, chamfer, 118, 5, 'mm');
        const foot = depth - askNumber(drillPointLength, 5, 118, 'mm');
        expect(deepestFull(foot, chamfer, pitch)).toBeCloseTo(20, 12);
      }
    }
  }); // prettier-ignore

  it('take a drill by name, diameter or not at all', () => {
    const depth = (drill: string | number | null) => askNumber(tapDepth, 0.5, '1/4-20', null, null, drill);
    expect(depth('#7')).toBe(depth(0.201));
    expect(depth('0.201 in')).toBe(depth(0.201));
    expect(depth(null)).toBeCloseTo(depth(ask(tapDrill, '1/4-20') as number), 12);
  });

  it('reach for threads larger than every drill', () => {
    expect(askNumber(tapDepth, 60, 'M64', 2, 180, null, 'mm')).toBeCloseTo(72, 9);
  });

  it('of feed: the tap leaves the plate after as many turns as it has pitches to go', () => {
    const travel = askNumber(tapTravel, 16, 'M8', null, null, 'mm');
    expect(travel / askNumber(tapFeed, 'M8', 500, 'mm')).toBeCloseTo(travel / 1.25 / 500, 12);
  });
});

describe('TAP.TORQUE', () => {
  // Another tap maker's equation, from the catalogue of 2021, p. 639 (docs.steelcam.org): tan θ k K (D - D0)² (D + 2 D0)/24000 N·m,
  // with k of its own table and K of a straight flute of 5 pitches.
  const other = (D: number, D0: number, k: number, K: number) =>
    (Math.tan(Math.PI / 6) * k * K * (D - D0) ** 2 * (D + 2 * D0)) / 24000;

  it.each([
    ['P20', 4900, 1.35],
    ['1018', 3600, 1.35],
    ['brass', 2300, 1.6],
    ['6061-T6', 1300, 1.25],
  ])('in %s is half to two and a half times as much as by another equation', (metal, k, K) => {
    for (const [thread, D, D0] of [['M4', 4, 3.3], ['M6', 6, 5], ['M8', 8, 6.8], ['M12', 12, 10.2]] as const) {
      const ratio = askNumber(tapTorque, thread, metal, 'mm') / other(D, D0, k, K);
      expect(ratio, thread).toBeGreaterThan(0.5);
      expect(ratio, thread).toBeLessThan(2.5);
    }
  }); // prettier-ignore

  it('says that the law of thin chips does not reach down to the finest pitches', () => {
    expect(outside(tapTorque, { thread: 'M2', metal: 'P20' })).toContain('0.02');
    expect(outside(tapTorque, { thread: 'M6', metal: 'P20' })).toBe('');
  });
});

describe('DRILL.NEAREST and DRILL.SIZE', () => {
  it('undo each other', () => {
    for (const { name, series } of DRILLS) {
      expect(ask(drillNearest, askNumber(drillSize, name), series)).toBe(name);
    }
  });

  it('say which argument to change', () => {
    expect(refusal(drillNearest, 2, 'letter').message).toMatch(/^series is letter; it has no drill.*Z/);
    expect(refusal(drillSize, 7).message).toMatch(/^name is "7".*"#7" or "7 in"/);
    expect(refusal(drillSize, '#81').code).toBe('#N/A');
  });
});

import { describe, expect, it } from 'vitest';
import { tapDrill } from '../../src/catalogue/tap/drill';
import { tapDrillName } from '../../src/catalogue/tap/drillName';
import { tapPercent } from '../../src/catalogue/tap/percent';
import { THREADS } from '../../src/tables/threads';
import { ask, askNumber } from '../support/ask';

/**
 * Tap drills as common charts give them (75 % charts in inches). Second hand, each from a chart read in this work:
 * #0 to 5/8 from two shop charts that agree thread by thread; 9/16 to 1-1/2 from Machinery's Handbook, 31st edition, p. 2168,
 * Table 4 (read; commercial tap drills of American National threads, which share diameters and pitches).
 */
// prettier-ignore
const INCH_CHART: Readonly<Record<string, string>> = {
  '#0-80': '3/64', '#1-64': '#53', '#1-72': '#53', '#2-56': '#50', '#2-64': '#50', '#3-48': '#47', '#3-56': '#45', '#4-40': '#43',
  '#4-48': '#42', '#5-40': '#38', '#5-44': '#37', '#6-32': '#36', '#6-40': '#33', '#8-32': '#29', '#8-36': '#29', '#10-24': '#25',
  '#10-32': '#21', '#12-24': '#16', '#12-28': '#14', '1/4-20': '#7', '1/4-28': '#3', '5/16-18': 'F', '5/16-24': 'I',
  '3/8-16': '5/16', '3/8-24': 'Q', '7/16-14': 'U', '7/16-20': '25/64', '1/2-13': '27/64', '1/2-20': '29/64',
  '9/16-12': '31/64', '9/16-18': '33/64', '5/8-11': '17/32', '5/8-18': '37/64', '3/4-10': '21/32', '3/4-16': '11/16',
  '7/8-9': '49/64', '7/8-14': '13/16', '1-8': '7/8', '1-12': '59/64', '1-1/8-7': '63/64', '1-1/8-12': '1-3/64',
  '1-1/4-7': '1-7/64', '1-1/4-12': '1-11/64', '1-3/8-6': '1-7/32', '1-3/8-12': '1-19/64', '1-1/2-6': '1-11/32', '1-1/2-12': '1-27/64',
};
/** ISO metric coarse, mm: a reference page (M1.6 to M30, second hand), M1.8, M2.2, M4.5, M9 and M11 from another chart or, M4.5, memory. */
// prettier-ignore
const METRIC_CHART: Readonly<Record<string, number>> = {
  'M1.6': 1.25, 'M1.8': 1.45, M2: 1.6, 'M2.2': 1.75, 'M2.5': 2.05, M3: 2.5, 'M3.5': 2.9, M4: 3.3, 'M4.5': 3.7, M5: 4.2, M6: 5, M7: 6, M8: 6.8,
  M9: 7.8, M10: 8.5, M11: 9.5, M12: 10.2, M14: 12, M16: 14, M18: 15.5, M20: 17.5, M22: 19.5, M24: 21, M27: 24, M30: 26.5,
};

/** Where a chart that was read gives another drill: what each leaves, and why ours stands. */
// prettier-ignore
const OTHER_CHARTS: readonly (readonly [thread: string, ours: string, left: number, theirs: string, leaves: number, why: string])[] = [
  ['6-32', '#36', 77.6, '#35', 69, 'one chart takes the next larger drill; #36 is nearer to 75 % and stands in two others'],
  ['M4.5', '3.7 mm', 82.1, '3.75 mm', 77, 'one chart takes the nearest to 75 %; ISO 2306 has 3.7, within 6H'],
  ['M12', '10.2 mm', 79.2, '10.3 mm', 74.8, 'one chart takes the nearest to 75 %; ISO 2306 has 10.2, within 6H'],
  ['M14', '12.0 mm', 77, '12.1 mm', 73.1, 'one chart takes the nearest to 75 %; ISO 2306 has 12, within 6H'],
];

describe('without a word on percent or series', () => {
  it('the charts below hold every UNC and UNF thread from #0 to 1-1/2 and every ISO coarse thread from M1.6 to M30', () => {
    const inch = THREADS.filter(
      ({ series, printed }) => (series === 'UNC' || series === 'UNF') && printed.major <= 1.5,
    );
    expect(Object.keys(INCH_CHART).sort()).toEqual(inch.map(({ name }) => name.replace(/ .*/, '')).sort());
    const metric = THREADS.filter(
      ({ series, printed }) => series === 'coarse' && printed.major >= 1.6 && printed.major <= 30,
    );
    expect(Object.keys(METRIC_CHART).sort()).toEqual(metric.map(({ name }) => name).sort());
  });

  it.each(Object.entries(INCH_CHART))('%s takes the %s of the charts', (thread, drill) => {
    expect(ask(tapDrillName, thread)).toBe(drill);
    expect(ask(tapDrillName, thread, null, null, null, 'mm')).toBe(drill);
  });

  it.each(Object.entries(METRIC_CHART))('%s takes the %d mm of the charts', (thread, drill) => {
    expect(askNumber(tapDrill, thread, null, null, null, 'mm')).toBeCloseTo(drill, 9);
  });

  it.each(OTHER_CHARTS)('%s takes %s and leaves %d %%; a chart has %s, which leaves %d %%: %s', (thread, ours, left, theirs, leaves) => {
    expect(ask(tapDrillName, thread)).toBe(ours);
    expect(askNumber(tapPercent, thread, ours)).toBeCloseTo(left, 0);
    expect(askNumber(tapPercent, thread, theirs)).toBeCloseTo(leaves, 0);
  }); // prettier-ignore

  it('a UNEF thread takes an inch drill too, and every thread larger than the charts’ one of its own system', () => {
    for (const { name, system } of THREADS) {
      const drill = ask(tapDrillName, name);
      if (typeof drill === 'string') expect(/mm$/.test(drill), name).toBe(system === 'ISO');
    }
  });
});

describe('a wire thread insert', () => {
  // Drill names of common insert charts (common practice, domain of the trade); by hand: D + 0.25 × 1.29904 P.
  it.each([
    ['10-32', '#7'],
    ['1/4-20', 'H'],
    ['5/16-18', 'Q'],
  ])('of %s is drilled %s, and for a metric screw never by ISO 2306', (thread, drill) => {
    expect(ask(tapDrillName, thread, null, 'wire insert')).toBe(drill);
    expect(askNumber(tapDrill, 'M6', null, 'wire insert', 'mm')).toBeCloseTo(6.3, 9);
  });

  it('needs a hole larger than the screw', () => {
    expect(askNumber(tapDrill, '4-40', null, 'wire insert')).toBeGreaterThan(0.112);
    expect(askNumber(tapDrill, 'M12', null, 'wire insert', 'mm')).toBeGreaterThan(12);
    expect(askNumber(tapPercent, 'M12', 12.1, 'wire insert', 'mm')).toBeGreaterThan(90);
  });
});

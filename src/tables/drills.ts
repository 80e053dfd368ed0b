import { fromMemory, derived, type Source, secondHand } from '../core/define';
import { Refusal } from '../core/refusal';

/** Twist drill sizes: number, letter, fraction (ASME B94.11M) and metric (ISO 235). */

export type DrillSeries = 'number' | 'letter' | 'fraction' | 'metric';
/** A choice of series: `inch` is number, letter and fraction. */
export type DrillChoice = DrillSeries | 'inch' | 'all';
export const DRILL_CHOICES = ['all', 'number', 'letter', 'fraction', 'metric', 'inch'] as const;

export interface Drill {
  /** `#21`, `F`, `7/32`, `5.0 mm`. */
  readonly name: string;
  readonly series: DrillSeries;
  /** Diameter, m. */
  readonly diameter: number;
}

export const DRILL_SOURCES: Readonly<Record<DrillSeries, Source>> = {
  number: secondHand('ASME B94.11M, as listed in gumyr/cq_warehouse drill_sizes.csv'),
  letter: secondHand('ASME B94.11M, as listed in gumyr/cq_warehouse drill_sizes.csv'),
  fraction: derived(
    'sixty-fourths of an inch; which of them are made above 1 1/2 in is from memory of ASME B94.11M',
  ),
  metric: fromMemory('ISO 235 preferred diameters: jobber series to 20 mm, taper shank series above'),
};

// #1 to #80, in 0.0001 in.
// prettier-ignore
const NUMBERS = [
  2280, 2210, 2130, 2090, 2055, 2040, 2010, 1990, 1960, 1935, 1910, 1890, 1850, 1820, 1800, 1770, 1730, 1695, 1660, 1610,
  1590, 1570, 1540, 1520, 1495, 1470, 1440, 1405, 1360, 1285, 1200, 1160, 1130, 1110, 1100, 1065, 1040, 1015, 995, 980,
  960, 935, 890, 860, 820, 810, 785, 760, 730, 700, 670, 635, 595, 550, 520, 465, 430, 420, 410, 400,
  390, 380, 370, 360, 350, 330, 320, 310, 292, 280, 260, 250, 240, 225, 210, 200, 180, 160, 145, 135,
];
// A to Z, in 0.001 in.
// prettier-ignore
const LETTERS = [
  234, 238, 242, 246, 250, 257, 261, 266, 272, 277, 281, 290, 295,
  302, 316, 323, 332, 339, 348, 358, 368, 377, 386, 397, 404, 413,
];
/** Sixty-fourths of an inch: each up to 1 3/4 in, every second one up to 2 1/4 in. */
const SIXTY_FOURTHS = [
  ...Array.from({ length: 112 }, (_, i) => i + 1),
  ...Array.from({ length: 16 }, (_, i) => 114 + 2 * i),
];

/** Tenths of a millimetre below 1 mm are split 0, 2, 5, 8; then even steps up to each limit, all in 0.01 mm. */
function metricHundredths(): number[] {
  const sizes: number[] = [];
  for (let tenth = 20; tenth < 100; tenth += 10) sizes.push(tenth, tenth + 2, tenth + 5, tenth + 8);
  let size = 100;
  for (const [step, limit] of [
    [5, 300],
    [10, 1400],
    [25, 3200],
    [50, 5100],
  ] as const)
    for (; size < limit; size += step) sizes.push(size);
  return [...sizes, size];
}

/** `3/8`, `1-1/4`, `1 in`: sixty-fourths in lowest terms; a bare `1` could be read as #1. */
function fractionName(sixtyFourths: number): string {
  const whole = Math.floor(sixtyFourths / 64);
  let [over, under] = [sixtyFourths % 64, 64];
  while (over > 0 && over % 2 === 0) [over, under] = [over / 2, under / 2];
  if (over === 0) return `${whole} in`;
  return whole > 0 ? `${whole}-${over}/${under}` : `${over}/${under}`;
}

const millimetres = (hundredths: number): string =>
  `${(hundredths / 100).toFixed(hundredths % 10 === 0 ? 1 : 2)} mm`;

// Fractions stand first, so that of equal sizes the fraction gives the name (E and 1/4).
export const DRILLS: readonly Drill[] = [
  ...SIXTY_FOURTHS.map((size): Drill => ({
    name: fractionName(size),
    series: 'fraction',
    diameter: (size / 64) * 0.0254,
  })),
  ...NUMBERS.map((size, i): Drill => ({
    name: `#${i + 1}`,
    series: 'number',
    diameter: (size / 10000) * 0.0254,
  })),
  ...LETTERS.map((size, i): Drill => ({
    name: String.fromCharCode(65 + i),
    series: 'letter',
    diameter: (size / 1000) * 0.0254,
  })),
  ...metricHundredths().map((size): Drill => ({
    name: millimetres(size),
    series: 'metric',
    diameter: size / 100000,
  })),
].sort((a, b) => a.diameter - b.diameter);

/** The drills of a series, smallest first. */
export const drillsOf = (choice: DrillChoice): readonly Drill[] =>
  DRILLS.filter(
    ({ series }) => choice === 'all' || choice === series || (choice === 'inch' && series !== 'metric'),
  );

/** Diameters closer than this are the same drill: conversions of one size leave rounding in the last digits. */
const SAME = 1e-9;

/**
 * The standard drill nearest to a diameter (m); of two equally near, the smaller. `up` and `down` take the next one at least or
 * at most as large. Beyond the ends of the series it refuses, as the last drill would be no answer.
 */
export function nearestDrill(
  diameter: number,
  choice: DrillChoice = 'all',
  round: 'nearest' | 'up' | 'down' = 'nearest',
): Drill {
  const drills = drillsOf(choice);
  const above = drills.findIndex((drill) => drill.diameter >= diameter - SAME);
  const next = drills[above];
  const exact = next && next.diameter <= diameter + SAME;
  if (!next) throw outside(diameter, choice, 'larger', drills[drills.length - 1]);
  if (exact || round === 'up') return next;
  const below = drills[above - 1];
  if (!below) throw outside(diameter, choice, 'smaller', next);
  if (round === 'down') return firstOfEqual(drills, below);
  const smaller = diameter - below.diameter <= next.diameter - diameter + SAME;
  return smaller ? firstOfEqual(drills, below) : next;
}

const firstOfEqual = (drills: readonly Drill[], { diameter }: Drill): Drill =>
  drills.find((drill) => Math.abs(drill.diameter - diameter) <= SAME) as Drill;

/**
 * The choice as steps of the diameter (m): from a diameter on, which drill. The last step is where the series ends.
 * It chooses as `nearestDrill` does, but for a tie within the last digits.
 */
export function drillSteps(
  choice: DrillChoice,
  round: 'nearest' | 'up' | 'down' = 'nearest',
): { readonly steps: readonly (readonly [from: number, drill: Drill])[]; readonly end: number } {
  const drills = drillsOf(choice).filter(
    ({ diameter }, i, all) => i === 0 || diameter - (all[i - 1]?.diameter ?? 0) > SAME,
  );
  const steps = drills.map((drill, i): readonly [number, Drill] => {
    const below = drills[i - 1];
    if (!below || round === 'down') return [drill.diameter - SAME, drill];
    const from = round === 'up' ? below.diameter : (below.diameter + drill.diameter) / 2;
    return [from + SAME, drill];
  });
  return { steps, end: (drills.at(-1)?.diameter ?? 0) + SAME };
}

function outside(diameter: number, choice: DrillChoice, than: string, last: Drill | undefined): Refusal {
  const series = choice === 'all' ? 'drill series' : `${choice} drill series`;
  const size = `${(diameter / 0.0254).toFixed(4)} in (${(diameter * 1000).toFixed(3)} mm)`;
  return new Refusal(
    `a hole of ${size} is ${than} than every drill of the ${series}, which ends at ${last?.name ?? ''}`,
  );
}

import {
  commonPractice,
  derived,
  fromMemory,
  type NativeInputs,
  type NativeWriter,
  type Values,
} from '../../core/define';
import { Refusal } from '../../core/refusal';
import { DRILL_CHOICES, drillSteps, type Drill, type DrillChoice } from '../../tables/drills';
import { isoTapDrill, TAP_DRILLS_SOURCE } from '../../tables/tapDrillsMetric';
import { threadLimits } from '../../tables/threadLimits';
import { FULL_THREAD, type Thread } from '../../tables/threads';
import { LARGE_DRILLS_CHANGE, nearestIn } from '../drills';
import { USUAL_CLASS } from '../threads';
import { SERIES_CHANGE, tapDrillInputs } from './inputs';

/** The hole before tapping: what drill leaves what percent of thread. */

type TapKind = Values<typeof tapDrillInputs>['kind'];

const USUAL_PERCENT = 0.75;

/** Share of the pitch by which a full thread narrows the hole. A forming tap raises metal, so its hole is larger. */
const narrowing = (kind: TapKind): number => (kind === 'form' ? 0.68 : FULL_THREAD);

/** Diameter of a hole that holds no thread at all. The tap of a wire insert is one wire a side larger than the screw. */
export const fullDiameter = ({ major, pitch }: Thread, kind: TapKind): number =>
  kind === 'wire insert' ? major + FULL_THREAD * pitch : major;

const idealDiameter = (thread: Thread, share: number, kind: TapKind): number =>
  fullDiameter(thread, kind) - narrowing(kind) * thread.pitch * share;

export const shareOfThread = (thread: Thread, diameter: number, kind: TapKind): number =>
  (fullDiameter(thread, kind) - diameter) / (narrowing(kind) * thread.pitch);

/** A shop has the drills of its own system. */
const usualSeries = ({ system }: Thread): DrillChoice => (system === 'UN' ? 'inch' : 'metric');

type TapDrillChoice = Values<typeof tapDrillInputs>;
type Show = (step: keyof typeof steps, value: number | string) => void;

/** The standard drill for a tap, with the working. */
export function chooseTapDrill(
  { thread, percent, kind, series: chosen }: TapDrillChoice,
  show: Show = () => undefined,
): Drill {
  const series = chosen ?? usualSeries(thread);
  const listed =
    percent === undefined &&
    kind === 'cut' &&
    thread.system === 'ISO' &&
    (series === 'all' || series === 'metric');
  const drill =
    (listed ? ofStandard(thread, show) : undefined) ??
    nearestTo(thread, percent ?? USUAL_PERCENT, kind, series, show);
  show('drill', drill.name);
  show('left', shareOfThread(thread, drill.diameter, kind));
  return drill;
}

function ofStandard(thread: Thread, show: Show): Drill | undefined {
  const drill = isoTapDrill(thread);
  if (drill) show('by', 'ISO 2306');
  return drill;
}

function nearestTo(thread: Thread, share: number, kind: TapKind, series: DrillChoice, show: Show): Drill {
  const ideal = idealDiameter(thread, share, kind);
  show('share', share);
  show('ideal', ideal);
  show('by', 'nearest of the series');
  return nearestIn(series, ideal);
}

/** Diameter of the hole that a thread is usually cut in; above the largest drill it is bored to the very size. */
export function usualHole(thread: Thread): number {
  try {
    return chooseTapDrill({ thread, percent: undefined, kind: 'cut', series: undefined }).diameter;
  } catch (error) {
    if (error instanceof Refusal) return idealDiameter(thread, USUAL_PERCENT, 'cut');
    throw error;
  }
}

export const PERCENT_EQUATION =
  '(d - drill)/(1.299*P) when cut, (d - drill)/(0.68*P) when formed, (d + 1.299*P - drill)/(1.299*P) for a wire insert';

const steps = {
  share: {
    gives: 'percent',
    says: 'Percent of thread that the hole is made for',
    equation: 'as given, else 75 %',
  },
  ideal: {
    gives: 'length',
    says: 'Diameter that leaves exactly that percent',
    equation: 'd - 1.299*P*p when cut, d - 0.68*P*p when formed, d + 1.299*P*(1 - p) for a wire insert',
  },
  by: { gives: 'text', says: 'How the drill is chosen', equation: 'ISO 2306 or nearest of the series' },
  drill: { gives: 'text', says: 'The standard drill', equation: 'its name' },
  left: {
    gives: 'percent',
    says: 'Percent of thread that it leaves',
    equation: PERCENT_EQUATION,
  },
} as const;

export const PERCENT_OF_THREAD = derived(
  '60° profile of ISO 68-1 and ASME B1.1: 100 % of thread is twice 3/4 of the sharp height, 1.29904 P',
);
export const FORMING_RULE = commonPractice(
  'Forming taps: diameter less 0.0068 of the pitch for each percent',
);
export const WIRE_INSERT = derived(
  'Wire thread insert: the tapped hole is one height of the wire’s profile, 0.6495 P, larger a side than the screw (geometry of ASME B18.29.1, not read)',
);
export const WIRE_INSERT_NOTE =
  'kind "wire insert": give the thread of the screw. The hole is tapped with the insert’s own tap, not with the tap of that thread; the insert’s maker has the last word.';
export const PERCENT_NOTE =
  'Percent on the scale of tap drill charts, where 100 % is 1.299 P and the basic profile holds 83.3 %. A scale on which the basic profile is 100 % ' +
  'gives 1.2 times as much. Diameter less pitch always leaves 77 %.';

interface TappedHole {
  readonly thread: Thread;
  readonly kind: TapKind;
  readonly diameter: number;
}

/** The most that the basic profile holds: 5/8 H of 3/4 H. */
const MOST_CUT = 5 / 6;
/** The metal of the groove fills the crests of the 5/8 H profile in a hole of d - 0.609 P (equal volumes, flat). */
const MOST_FORMED = 0.609 / 0.68;
const LEAST_FORMED = 0.5;
const ROUNDING = 1e-9;

/** Largest minor diameter of the hole's usual class; none for the finest threads, to which ISO 965-1 gives no grade 6. */
function largestMinor(thread: Thread): number {
  try {
    return threadLimits(thread, USUAL_CLASS[thread.system].hole, 'minor').max ?? Infinity;
  } catch (error) {
    if (error instanceof Refusal) return Infinity;
    throw error;
  }
}

const RANGE: readonly {
  readonly kind: TapKind;
  readonly holds: (hole: TappedHole, share: number) => boolean;
  readonly says: string;
}[] = [
  {
    kind: 'cut',
    holds: (_, share) => share <= MOST_CUT + ROUNDING,
    says: 'More than 83.3 % of thread: the hole is below the smallest minor diameter of class 2B or 6H, and the tap cuts with its root.',
  },
  {
    kind: 'cut',
    holds: ({ thread, diameter }) => diameter <= largestMinor(thread) + ROUNDING,
    says: 'The hole is larger than class 2B or 6H lets the minor diameter be: it holds less than the standard counts on.',
  },
  {
    kind: 'wire insert',
    holds: (_, share) => share <= MOST_CUT + ROUNDING,
    says: 'More than 83.3 % of thread: the hole is below the smallest that the insert’s tap is made for.',
  },
  {
    kind: 'form',
    holds: (_, share) => share <= MOST_FORMED + ROUNDING,
    says: 'The metal that the tap raises has no room in this hole: the tap seizes and breaks.',
  },
  {
    kind: 'form',
    holds: (_, share) => share >= LEAST_FORMED - ROUNDING,
    says: 'Less than 50 % of thread: the crests stay low and hollow.',
  },
];

/** The range of validity of a tapped hole, for a definition whose values say which hole. */
export const holeInRange = <X>(
  holeOf: (x: X) => TappedHole,
): { readonly holds: (x: X) => boolean; readonly says: string }[] =>
  RANGE.map(({ kind, holds, says }) => ({
    holds: (x) => {
      const hole = holeOf(x);
      return hole.kind !== kind || holds(hole, shareOfThread(hole.thread, hole.diameter, hole.kind));
    },
    says,
  }));

type NativeChoice = NativeInputs<typeof tapDrillInputs>;

/** Of a thread whose major diameter and pitch are texts: the diameter that holds none, and what a full one narrows. */
export const nativeNarrowing = (
  { d, P }: { readonly d: string; readonly P: string },
  kind: TapKind,
): { readonly full: string; readonly narrowed: string } => ({
  full: kind === 'wire insert' ? `(${d}+${FULL_THREAD}*${P})` : d,
  narrowed: `${narrowing(kind)}*${P}`,
});

export const threadColumns = {
  d: { head: 'Basic major diameter (m)', from: ({ major }: Thread) => major },
  P: { head: 'Pitch (m)', from: ({ pitch }: Thread) => pitch },
};

/** The choice as worksheet text; what is told of a drill is up to the function. */
export function nativeTapDrill(
  { thread, percent, kind: of, series }: NativeChoice,
  write: NativeWriter,
  tell: { readonly head: string; readonly of: (drill: Drill) => number | string },
): string {
  const kind = of.fixed();
  const { usual, listed, ...sizes } = thread.look({
    ...threadColumns,
    usual: { head: 'Usual series', from: usualSeries },
    listed: {
      head: `ISO 2306: ${tell.head}`,
      from: (own) => {
        const drill = own.system === 'ISO' ? isoTapDrill(own) : undefined;
        return drill ? tell.of(drill) : NOT_LISTED;
      },
    },
  });
  const { full, narrowed } = nativeNarrowing(sizes, kind);
  const chosen = series.word(usual);
  const ideal = write.step('ideal', `${full}-${narrowed}*${percent.given ? percent.text : USUAL_PERCENT}`);
  const steps = DRILL_CHOICES.map((one) => ({ one, ...drillSteps(one) }));
  const column = write.columns(
    `Tap drills by series: ${tell.head}`,
    ['series', 'from (m)', tell.head],
    steps.flatMap(({ one, steps: own }) => own.map(([from, drill]) => [one, from, tell.of(drill)])),
  );
  const ends = write.columns(
    'Largest drill of a series',
    ['series', 'up to (m)'],
    steps.map(({ one, end }) => [one, end]),
  );
  const before = write.step('below', `SUMPRODUCT((${column(0)}=${chosen})*(${column(1)}<=${ideal}))`);
  write.refuse(`${before}<1`, 'series has no drill so small');
  write.refuse(`${ideal}>INDEX(${ends(1)},MATCH(${chosen},${ends(0)},0))`, 'series has no drill so large');
  const nearest = `INDEX(${column(2)},MATCH(${chosen},${column(0)},0)-1+${before})`;
  if (percent.given || kind !== 'cut') return nearest;
  const asksFor = `OR(${chosen}="all",${chosen}="metric")`;
  return `IF(AND(${asksFor},${listed}<>"${NOT_LISTED}"),${listed},${nearest})`;
}

const NOT_LISTED = 'none';

/** What the functions of the tap drill share; they differ in what they tell of it. */
export const tapDrillParts = {
  inputs: tapDrillInputs,
  method:
    'The drill of the series nearest the ideal diameter; for an ISO metric thread that is cut, without a percent, the drill of ISO 2306.',
  steps,
  changes: [SERIES_CHANGE, LARGE_DRILLS_CHANGE],
  sources: [
    PERCENT_OF_THREAD,
    TAP_DRILLS_SOURCE,
    fromMemory('Drill sizes of ASME B94.11M and ISO 235'),
    FORMING_RULE,
    WIRE_INSERT,
  ],
  notes: [PERCENT_NOTE, WIRE_INSERT_NOTE],
  valid: holeInRange((x: TapDrillChoice) => ({ ...x, diameter: chooseTapDrill(x).diameter })),
  cautions: [
    {
      says:
        'Small taps break: take 60 to 70 % in steel, and back out often in a deep blind hole (common practice). ' +
        'Wear eye protection, and keep your hands off chips and tap while the spindle turns.',
    },
  ],
} as const;

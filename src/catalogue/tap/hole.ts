import { choice, commonPractice, derived, fromMemory, input } from '../../core/define';
import { refuse, Refusal } from '../../core/refusal';
import { DRILL_CHOICES, nearestDrill, type Drill, type DrillChoice } from '../../tables/drills';
import { isoTapDrill } from '../../tables/tapDrillsMetric';
import { FULL_THREAD, type Thread } from '../../tables/threads';
import { thread } from '../threads';

/** The hole before tapping: what drill leaves what percent of thread. */

export const TAP_KINDS = ['cut', 'form'] as const;
export type TapKind = (typeof TAP_KINDS)[number];

export const percent = input('percent', 'p', 'percent', {
  above: 0,
  max: 100,
  usual: [50, 90],
  optional: true,
  says: 'Percent of full thread wanted, 100 % being 1.299 P; left out: 75, or the drill of ISO 2306 for an ISO metric thread',
});
export const tapKind = choice('kind', TAP_KINDS, {
  default: 'cut',
  says: 'Cutting tap, or forming tap (which needs a larger hole)',
});
export const drillSeries = choice('series', DRILL_CHOICES, {
  default: 'all',
  says: 'Drills to choose from; "inch" is number, letter and fraction',
});
export const tapDrillInputs = [thread, percent, tapKind, drillSeries] as const;

const USUAL_PERCENT = 0.75;

/** Share of the pitch by which a full thread narrows the hole. A forming tap raises metal, so its hole is larger. */
const narrowing = (kind: TapKind): number => (kind === 'cut' ? FULL_THREAD : 0.68);

export const idealDiameter = ({ major, pitch }: Thread, share: number, kind: TapKind): number =>
  major - narrowing(kind) * pitch * share;

export const shareOfThread = ({ major, pitch }: Thread, diameter: number, kind: TapKind): number =>
  (major - diameter) / (narrowing(kind) * pitch);

interface TapDrillChoice {
  readonly thread: Thread;
  readonly percent: number | undefined;
  readonly kind: TapKind;
  readonly series: DrillChoice;
}
type Show = (step: 'share' | 'ideal' | 'drill' | 'left', value: number | string) => void;

/** The standard drill for a tap, with the working. */
export function chooseTapDrill(
  { thread: t, percent: wanted, kind, series }: TapDrillChoice,
  show: Show,
): Drill {
  const listed =
    wanted === undefined && kind === 'cut' && t.system === 'ISO' && (series === 'all' || series === 'metric');
  const drill =
    (listed ? isoTapDrill(t) : undefined) ?? nearestTo(t, wanted ?? USUAL_PERCENT, kind, series, show);
  show('drill', drill.name);
  show('left', shareOfThread(t, drill.diameter, kind));
  return drill;
}

function nearestTo(t: Thread, share: number, kind: TapKind, series: DrillChoice, show: Show): Drill {
  const ideal = idealDiameter(t, share, kind);
  show('share', share);
  show('ideal', ideal);
  try {
    return nearestDrill(ideal, series);
  } catch (error) {
    return error instanceof Refusal
      ? refuse('series', `has no drill near it: ${error.message}`)
      : refuse('series', String(error));
  }
}

export const tapDrillSteps = {
  share: { gives: 'percent', says: 'Percent of thread that the hole is made for', equation: 'p' },
  ideal: {
    gives: 'length',
    says: 'Diameter that leaves exactly that percent',
    equation: 'd - 1.299*P*p when cut, d - 0.68*P*p when formed',
  },
  drill: { gives: 'text', says: 'The standard drill', equation: 'nearest of the series, or ISO 2306' },
  left: {
    gives: 'percent',
    says: 'Percent of thread that it leaves',
    equation: '(d - drill)/(1.299*P) when cut',
  },
} as const;

export const TAP_DRILL_METHOD =
  'The drill of the series nearest the ideal diameter; for an ISO metric thread without a percent the drill of ISO 2306.';

export const tapDrillSources = [
  derived(
    '60° profile of ISO 68-1 and ASME B1.1: 100 % of thread is twice 3/4 of the sharp height, 1.29904 P',
  ),
  fromMemory('ISO 2306 drills before tapping; drill sizes of ASME B94.11M and ISO 235'),
  commonPractice('Forming taps: diameter less 0.0068 of the pitch for each percent'),
] as const;

/** The most that the basic profile holds: 5/8 H of 3/4 H. */
export const MOST_SHARE = 5 / 6;

export const tapDrillCautions = [
  {
    when: ({ thread: t, percent: p, kind, series }: TapDrillChoice): boolean => {
      const drill = chooseTapDrill({ thread: t, percent: p, kind, series }, () => undefined);
      return shareOfThread(t, drill.diameter, kind) > MOST_SHARE + 1e-9;
    },
    says: 'More than 83.3 % of thread: the hole is below the basic minor diameter, and the tap cuts with its root.',
  },
  {
    says: 'Small taps break: take 60 to 70 % in steel, and back out often in a deep blind hole (common practice).',
  },
] as const;

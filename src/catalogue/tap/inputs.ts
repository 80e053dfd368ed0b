import { choice, input, type Change } from '../../core/define';
import { DRILL_CHOICES } from '../../tables/drills';
import { thread } from '../threads';

/** What the functions of tapped holes share. */

export const percent = input('percent', 'p', 'percent', {
  above: 0,
  max: 100,
  usual: [50, 85],
  optional: true,
  says: 'Percent of full thread wanted, 100 % being 1.299 P',
  whenLeftOut: '75 %, or the drill of ISO 2306 for an ISO metric thread',
});
export const tapKind = choice('kind', ['cut', 'form', 'wire insert'], {
  default: 'cut',
  says: 'Cutting tap, forming tap (which needs a larger hole), or the tap of a wire thread insert for a screw of this thread',
});
export const tapDrillSeries = choice('series', DRILL_CHOICES, {
  optional: true,
  says: 'Drills to choose from; "inch" is number, letter and fraction; left out: inch drills for an inch thread, metric drills for a metric thread',
});
export const SERIES_CHANGE: Change = {
  basis: 2,
  says: 'An inch thread takes an inch drill where no series is given; before, a metric one that is nearer.',
};
export const tapDrillInputs = [thread, percent, tapKind, tapDrillSeries] as const;

export const chamferPitches = input('chamferPitches', 'c', 'ratio', {
  min: 0,
  default: 4,
  usual: [1, 10],
  says: 'Chamfer of the tap in pitches: plug and spiral point 3 to 5, bottoming 1 to 2, taper 7 to 10',
});

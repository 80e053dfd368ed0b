import { choice, input } from '../../core/define';
import { drillSeries } from '../drills';
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
export const tapKind = choice('kind', ['cut', 'form'], {
  default: 'cut',
  says: 'Cutting tap, or forming tap (which needs a larger hole)',
});
export const tapDrillInputs = [thread, percent, tapKind, drillSeries] as const;

export const chamferPitches = input('chamferPitches', 'c', 'ratio', {
  min: 0,
  default: 4,
  usual: [1, 10],
  says: 'Chamfer of the tap in pitches: plug and spiral point 3 to 5, bottoming 1 to 2, taper 7 to 10',
});

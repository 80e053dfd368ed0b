import { procedure } from '../../core/define';
import { deviation, nativeDeviations, shownDeviations } from './inputs';

export const fitUpper = procedure({
  name: 'FIT.UPPER',
  summary: 'Upper limit deviation of a tolerance class.',
  ...deviation,
  gives: 'length',
  run: (x, show) => shownDeviations(x, show).upper,
  native: ({ size: D, class: of }, write) => nativeDeviations(D.text, of, write).upper,
  related: ['FIT.LOWER', 'FIT.LIMITS', 'FIT.GAP'],
});

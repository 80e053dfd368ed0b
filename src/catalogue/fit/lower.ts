import { procedure } from '../../core/define';
import { deviation, nativeDeviations, shownDeviations } from './inputs';

export const fitLower = procedure({
  name: 'FIT.LOWER',
  summary: 'Lower limit deviation of a tolerance class.',
  ...deviation,
  gives: 'length',
  run: (x, show) => shownDeviations(x, show).lower,
  native: ({ size: D, class: of }, write) => nativeDeviations(D.text, of, write).lower,
  related: ['FIT.UPPER', 'FIT.LIMITS', 'FIT.GAP'],
});

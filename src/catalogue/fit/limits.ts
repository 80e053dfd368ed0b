import { procedure } from '../../core/define';
import { deviation, nativeDeviations, shownDeviations } from './inputs';

export const fitLimits = procedure({
  name: 'FIT.LIMITS',
  summary: 'The two limits of size of a tolerance class in one row: lower, upper.',
  ...deviation,
  gives: {
    row: [
      { gives: 'length', says: 'Lower limit of size' },
      { gives: 'length', says: 'Upper limit of size' },
    ],
  },
  run: (x, show) => {
    const { upper, lower } = shownDeviations(x, show);
    return [x.size + lower, x.size + upper];
  },
  native: ({ size: D, class: of }, write) => {
    const { lower, upper } = nativeDeviations(D.text, of, write);
    return [`${D.text}+${lower}`, `${D.text}+${upper}`];
  },
  related: ['FIT.UPPER', 'FIT.LOWER', 'FIT.GAP'],
});

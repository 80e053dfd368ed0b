import { procedure } from '../../core/define';
import { deviation, deviationsAt, nativeBySize, nativeRefuseOtherSize, shownDeviations } from './inputs';

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
    const { name: found, ...written } = of.fixed();
    nativeRefuseOtherSize(D.text, written, write);
    return (['lower', 'upper'] as const).map((which) => {
      const title = `${which === 'lower' ? 'Lower' : 'Upper'} deviation of ${found}`;
      return `${D.text}+${nativeBySize(title, D.text, (at) => deviationsAt('class', at, found)[which], write)}`;
    });
  },
  related: ['FIT.UPPER', 'FIT.LOWER', 'FIT.GAP'],
});

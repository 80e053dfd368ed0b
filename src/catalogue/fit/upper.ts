import { procedure } from '../../core/define';
import { deviation, deviationsAt, nativeBySize, nativeRefuseOtherSize, shownDeviations } from './inputs';

export const fitUpper = procedure({
  name: 'FIT.UPPER',
  summary: 'Upper limit deviation of a tolerance class.',
  ...deviation,
  gives: 'length',
  run: (x, show) => shownDeviations(x, show).upper,
  native: ({ size: D, class: of }, write) => {
    const { name: found, ...written } = of.fixed();
    nativeRefuseOtherSize(D.text, written, write);
    return nativeBySize(
      `Upper deviation of ${found}`,
      D.text,
      (at) => deviationsAt('class', at, found).upper,
      write,
    );
  },
  related: ['FIT.LOWER', 'FIT.LIMITS', 'FIT.GAP'],
});

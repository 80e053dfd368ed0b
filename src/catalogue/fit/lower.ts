import { procedure } from '../../core/define';
import { deviation, deviationsAt, nativeBySize, nativeRefuseOtherSize, shownDeviations } from './inputs';

export const fitLower = procedure({
  name: 'FIT.LOWER',
  summary: 'Lower limit deviation of a tolerance class.',
  ...deviation,
  gives: 'length',
  run: (x, show) => shownDeviations(x, show).lower,
  native: ({ size: D, class: of }, write) => {
    const { name: found, ...written } = of.fixed();
    nativeRefuseOtherSize(D.text, written, write);
    return nativeBySize(
      `Lower deviation of ${found}`,
      D.text,
      (at) => deviationsAt('class', at, found).lower,
      write,
    );
  },
  related: ['FIT.UPPER', 'FIT.LIMITS', 'FIT.GAP'],
});

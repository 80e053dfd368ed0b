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
  checks: [
    {
      given: { size: '8 mm', class: 'm6' },
      expect: '6 µm',
      within: 1e-9,
      from: 'ISO 286-2: 8 m6 is +15 / +6 µm (Machine Drawing, Table 15.2)',
    },
    {
      given: { size: '63 mm', class: 'N7' },
      expect: '-39 µm',
      within: 1e-9,
      from: 'ISO 286-2: 63 N7 is −9 / −39 µm (Machine Drawing, Table 15.3)',
    },
    {
      given: { size: '30 mm', class: 'H7' },
      expect: '0 µm',
      from: 'a hole H begins at the nominal size',
      limit: true,
    },
  ],
});

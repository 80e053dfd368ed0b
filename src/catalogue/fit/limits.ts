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
  checks: [
    {
      given: { size: '25 mm', class: 'H7' },
      expect: ['25 mm', '25.021 mm'],
      within: 1e-9,
      from: 'ISO 286-2: 25 H7 is +21 / 0 µm (Machine Drawing, Table 15.1)',
    },
    {
      given: { size: '10 mm', class: 'f9' },
      expect: ['9.951 mm', '9.987 mm'],
      within: 1e-9,
      from: 'ISO 7379: limits of a 10 mm shoulder',
    },
    {
      given: { size: '50 mm', class: 'js6' },
      expect: ['49.992 mm', '50.008 mm'],
      within: 1e-9,
      from: 'js lies evenly about the nominal size: half of IT6 = 16 µm',
      limit: true,
    },
  ],
});

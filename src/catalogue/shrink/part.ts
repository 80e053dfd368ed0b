import { formula } from '../../core/define';
import { cavitySize, DEFINITION, SHRINK_CAUTION, shrinkage, TABLE } from './inputs';

export const shrinkPart = formula({
  name: 'SHRINK.PART',
  summary: 'Size of the part that a cavity makes.',
  inputs: [cavitySize, shrinkage],
  steps: { l_p: { gives: 'length', expr: 'l_c*(1 - S)', says: 'Cavity less its shrinkage' } },
  result: 'l_p',
  sources: [DEFINITION, TABLE],
  cautions: [{ says: SHRINK_CAUTION }],
  related: ['SHRINK.CAVITY', 'SHRINK.SCATTER'],
  checks: [
    {
      given: { cavitySize: '80.5 mm', shrinkage: 0.006 },
      expect: '80.017 mm',
      within: 1e-12,
      from: 'by hand: 80.5 × 0.994',
    },
    {
      given: { cavitySize: '2.55 in', shrinkage: 0.02 },
      expect: '2.499 in',
      within: 1e-12,
      from: 'by hand: 2.55 × 0.98',
    },
    {
      given: { cavitySize: '80 mm', shrinkage: 0 },
      expect: '80 mm',
      within: 1e-12,
      from: 'without shrinkage the cavity’s own size',
      limit: true,
    },
  ],
});

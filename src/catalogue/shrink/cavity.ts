import { formula } from '../../core/define';
import { DEFINITION, partSize, SHRINK_CAUTION, shrinkage, TABLE } from './inputs';

export const shrinkCavity = formula({
  name: 'SHRINK.CAVITY',
  summary: 'Size to cut a cavity so that the part shrinks to its size.',
  inputs: [partSize, shrinkage],
  steps: { l_c: { gives: 'length', expr: 'l_p/(1 - S)', says: 'Part over one less the shrinkage' } },
  result: 'l_c',
  sources: [DEFINITION, TABLE],
  notes: [
    'Part times (1 + S) is a shortcut that comes out small: by 0.064 mm on 100 mm at 2.5 %. Do not add the growth of the warm mold: it is in the shrinkage.',
  ],
  cautions: [{ says: SHRINK_CAUTION }],
  related: ['SHRINK.PART', 'SHRINK.SCATTER', 'RESIN.VALUE'],
  checks: [
    {
      given: { partSize: '50 mm', shrinkage: 0.018 },
      expect: '50.9164969450 mm',
      within: 1e-9,
      from: 'by hand: 50/0.982',
    },
    {
      given: { partSize: '75 mm', shrinkage: 'PP' },
      expect: '76.3747454175 mm',
      within: 1e-9,
      from: 'by hand: 75/0.982, 1.8 % being the middle of 1.2 to 2.4 % (general molding guide)',
    },
    {
      given: { partSize: '75 mm', shrinkage: 0 },
      expect: '75 mm',
      within: 1e-12,
      from: 'without shrinkage the part’s own size',
      limit: true,
    },
  ],
});

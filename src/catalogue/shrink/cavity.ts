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
});

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
});

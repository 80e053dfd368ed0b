import { formula } from '../../core/define';
import {
  disc,
  DISC_LIFE,
  DISC_SOURCES,
  discIsUsual,
  discLimits,
  discMetal,
  discStrain,
  notPastFlat,
} from './disc';
import { ringHasBreadth, STORED_ENERGY } from './inputs';

export const springDiscForce = formula({
  name: 'SPRING.DISCFORCE',
  summary: 'Force of one disc spring at a deflection.',
  inputs: [...disc, ...discMetal],
  refuse: [ringHasBreadth, notPastFlat],
  constants: discLimits,
  steps: {
    ...discStrain,
    F: {
      gives: 'force',
      expr: 'q*t^2*((h_0 - s)/t*(h_0 - s/2)/t + 1)',
      says: 'Turning of the cone’s section, softer as it flattens',
    },
  },
  result: 'F',
  valid: discIsUsual,
  sources: DISC_SOURCES,
  notes: [
    'Tables give forces at three quarters of the cone height with the deflection rounded: enter that deflection to compare, then they agree within 0.6 %.',
    DISC_LIFE,
  ],
  cautions: [
    {
      when: 'h_0 > 1.414*t',
      says: 'So tall a cone may snap through: the force falls before it is flat. Guide it and do not rely on it for return.',
    },
    { says: STORED_ENERGY },
  ],
  related: ['SPRING.DISCSTACK', 'SPRING.DISCSTRESS'],
});

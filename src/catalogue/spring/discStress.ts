import { choice, formula } from '../../core/define';
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

export const springDiscStress = formula({
  name: 'SPRING.DISCSTRESS',
  summary: 'Stress at a point of a disc spring; tension is positive.',
  inputs: [
    ...disc,
    choice('point', ['OM', 'I', 'II', 'III', 'IV'], {
      says: 'Upper middle (OM), upper inside edge (I), lower inside (II), lower outside (III), upper outside (IV)',
    }),
    ...discMetal,
  ],
  refuse: [ringHasBreadth, notPastFlat],
  constants: discLimits,
  steps: {
    ...discStrain,
    K_2: { gives: 'ratio', expr: '6/pi*((delta - 1)/ln(delta) - 1)/ln(delta)', says: 'Factor of the cone' },
    K_3: { gives: 'ratio', expr: '3/pi*(delta - 1)/ln(delta)', says: 'Factor of bending' },
    e: { gives: 'ratio', expr: '(h_0 - s/2)/t', says: 'Mean cone height over thickness' },
    sigma: {
      gives: 'pressure',
      by: 'point',
      cases: {
        OM: '-q*3/pi',
        I: '-q*(K_2*e + K_3)',
        II: '-q*(K_2*e - K_3)',
        III: '-q/delta*((K_2 - 2*K_3)*e - K_3)',
        IV: '-q/delta*((K_2 - 2*K_3)*e + K_3)',
      },
      says: 'Tangential stress of the turned section',
    },
  },
  result: 'sigma',
  valid: discIsUsual,
  sources: DISC_SOURCES,
  notes: [
    'OM limits a static load: at flat its compression should not pass the yield strength, 1400 to 1600 MPa for the usual steels. II and III are in tension and decide the life under many cycles.',
    DISC_LIFE,
  ],
  cautions: [{ says: STORED_ENERGY }],
  related: ['SPRING.DISCFORCE', 'SPRING.DISCSTACK'],
});

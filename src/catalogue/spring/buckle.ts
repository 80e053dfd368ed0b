import { constant, formula } from '../../core/define';
import { EN_BUCKLING, freeLength, meanDia, seating, seatingIsKnown, STORED_ENERGY } from './inputs';

export const springBuckle = formula({
  name: 'SPRING.BUCKLE',
  summary: 'Deflection at which a steel compression spring buckles; "stable" where it never does.',
  inputs: [freeLength, meanDia, seating],
  constants: {
    G: constant('pressure', '81500 MPa', 'Shear modulus of spring steel'),
    E: constant('pressure', '206000 MPa', 'Young’s modulus of spring steel'),
  },
  steps: {
    gamma: { gives: 'ratio', expr: 'G/E', says: 'Ratio of the moduli' },
    lambda: { gives: 'ratio', expr: 'nu*L_0/D', says: 'Slenderness, with the hold of the ends' },
    q: {
      gives: 'ratio',
      expr: '1 - (1 - gamma)/(0.5 + gamma)*(pi/lambda)^2',
      says: 'Below zero no deflection bends it out',
    },
    s: {
      gives: 'length',
      expr: '0.5*L_0/(1 - gamma)*(1 - sqrt(q))',
      says: 'Deflection at which the bent shape is in balance',
    },
  },
  result: 's',
  inWords: { when: 'q < 0', says: 'stable' },
  valid: [seatingIsKnown],
  sources: [EN_BUCKLING],
  notes: [
    '"stable": no deflection makes it buckle. Otherwise stay well below the deflection given, or guide the spring on a rod or in a bore with clearance.',
    'Compare with the deflection to solid, free length less SPRING.SOLID: a spring that is solid first does not buckle.',
  ],
  cautions: [
    { says: 'A spring that buckles jumps sideways and binds in its pocket. Guide it where in doubt.' },
    { says: STORED_ENERGY },
  ],
  related: ['SPRING.FREELIMIT', 'SPRING.SOLID'],
});

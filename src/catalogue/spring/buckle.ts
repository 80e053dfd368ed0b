import { formula } from '../../core/define';
import { EN_BUCKLING, freeLength, meanDia, seating, seatingIsKnown, STORED_ENERGY } from './inputs';

export const springBuckle = formula({
  name: 'SPRING.BUCKLE',
  summary: 'Deflection at which a steel compression spring buckles; "stable" where it never does.',
  inputs: [freeLength, meanDia, seating],
  steps: {
    gamma: { gives: 'ratio', expr: '81500/206000', says: 'G/E of spring steel, both in MPa' },
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
  checks: [
    {
      given: { freeLength: '80 mm', meanDia: '14 mm' },
      expect: '37.78286 mm',
      within: 1e-6,
      from: 'by hand: 80 × 0.827309 × (1 − √(1 − 0.674797 × (14π/40)²)), γ = 0.395631',
    },
    {
      given: { freeLength: '4 in', meanDia: '0.5 in', seating: 1 },
      expect: '0.176912 in',
      within: 1e-6,
      from: 'by hand: 4 × 0.827309 × (1 − √(1 − 0.674797 × (π/8)²))',
    },
    {
      given: { freeLength: '149 mm', meanDia: '31 mm' },
      expect: 'stable',
      from: 'Shigley’s rule for steel: stable while the free length is below 2.63 D/0.5 = 163 mm',
    },
    {
      given: { freeLength: '30 mm', meanDia: '14 mm' },
      expect: 'stable',
      from: 'a spring little longer than its diameter cannot buckle',
      limit: true,
    },
    {
      given: { freeLength: '10 m', meanDia: '10 mm', seating: 1 },
      expect: '0.0275493 mm',
      within: 1e-5,
      from: 'a long slender one is an Euler column: L₀ (π/λ)²/(2 + 4 γ) = 10000 × 9.8696e-6/3.582524',
      limit: true,
    },
  ],
});

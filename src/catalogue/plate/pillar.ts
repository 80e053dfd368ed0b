import { commonPractice, derived, formula, input } from '../../core/define';
import { metal } from '../metals';
import { PRESSED_PLATE } from './inputs';

export const platePillar = formula({
  name: 'PLATE.PILLAR',
  summary: 'Shortening of support pillars under their share of the clamp or cavity force.',
  inputs: [
    input('force', 'F', 'force', {
      min: '0 N',
      usual: ['50 N', '2000 kN'],
      says: 'Force on all pillars together',
    }),
    input('pillars', 'n', 'count', { min: 1, usual: [1, 30], says: 'Number of pillars that share it' }),
    input('pillarDia', 'd', 'length', {
      above: '0 mm',
      usual: ['4 mm', '120 mm'],
      says: 'Diameter of a pillar',
    }),
    input('length', 'L', 'length', {
      above: '0 mm',
      usual: ['5 mm', '300 mm'],
      says: 'Length of a pillar',
    }),
    metal('metal', '', 'Metal of the pillars'),
  ],
  steps: {
    A: { gives: 'area', expr: 'n*pi*d^2/4', says: 'Sections of all pillars' },
    sigma: { gives: 'pressure', expr: 'F/A', says: 'Stress in the pillars' },
    u: { gives: 'length', expr: 'sigma*L/E', says: 'Hooke’s law' },
  },
  result: 'u',
  strength: [{ stress: 'sigma', of: 'metal' }],
  valid: [
    { holds: 'L <= 10*d', says: 'The pillars are longer than ten diameters: they buckle, see PIN.BUCKLE.' },
  ],
  sources: [
    derived('Hooke’s law for a bar, F L/(n A E)'),
    commonPractice('Pillars are fitted 0 to 0.03 mm proud of the rails'),
  ],
  notes: [
    'Pillars proud of the rails by what they shorten share the load with them from the start. More than that bends the plates.',
    'The pillars also dent what they stand on: keep their stress well below the yield of the plates.',
  ],
  cautions: [{ says: PRESSED_PLATE }],
  related: ['PLATE.SAG', 'CLAMP.FORCE', 'PIN.BUCKLE'],
});

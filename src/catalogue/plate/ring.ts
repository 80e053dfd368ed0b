import { derived, formula, input } from '../../core/define';
import { plateMetal, pressure, PRESSED_PLATE } from './inputs';

export const plateRing = formula({
  name: 'PLATE.RING',
  summary: 'Radial growth of a round cavity under pressure.',
  inputs: [
    input('innerRadius', 'r', 'length', {
      above: '0 mm',
      usual: ['0.5 mm', '300 mm'],
      says: 'Radius of the cavity',
    }),
    input('outerRadius', 'R', 'length', {
      above: '0 mm',
      usual: ['2 mm', '600 mm'],
      says: 'Outer radius of the block around it; for a square block half its width',
    }),
    pressure,
    plateMetal,
  ],
  refuse: [{ when: 'R <= r', argument: 'outerRadius', says: 'must be larger than {innerRadius}' }],
  steps: {
    k: { gives: 'ratio', expr: '(R^2 + r^2)/(R^2 - r^2)', says: 'Lamé’s factor of the ring' },
    sigma_t: { gives: 'pressure', expr: 'p*k', says: 'Hoop stress at the bore, the highest in the ring' },
    u: { gives: 'length', expr: 'r/E*(sigma_t + nu*p)', says: 'Hooke’s law at the bore' },
  },
  result: 'u',
  valid: [
    { holds: 'u <= 0.02*r', says: 'The bore grows by more than a fiftieth: the metal yields long before.' },
  ],
  sources: [
    derived('Lamé thick cylinder with free ends, r p/E ((R² + r²)/(R² − r²) + ν)'),
    derived('Lamé’s thick-walled cylinder under internal pressure'),
  ],
  notes: [
    'Keep the growth below the shrinkage of the part’s wall, or the relaxing cavity grips the part.',
    'Compare the hoop stress, shown among the steps, with the yield of the metal.',
  ],
  cautions: [{ says: PRESSED_PLATE }],
  related: ['PLATE.WALL', 'SEAT.SINK', 'DOWEL.PRESS'],
});

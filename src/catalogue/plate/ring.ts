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
    sigma_v: {
      gives: 'pressure',
      expr: 'p*sqrt(3*R^4 + r^4)/(R^2 - r^2)',
      says: 'Stress there by von Mises, hoop stress and pressure together',
    },
    u: { gives: 'length', expr: 'r/E*(sigma_t + nu*p)', says: 'Hooke’s law at the bore' },
  },
  result: 'u',
  strength: [{ stress: 'sigma_v', of: 'metal' }],
  valid: [
    { holds: 'u <= 0.02*r', says: 'The bore grows by more than a fiftieth: the metal yields long before.' },
  ],
  sources: [
    derived('Lamé thick cylinder with free ends, r p/E ((R² + r²)/(R² − r²) + ν)'),
    derived('Lamé’s thick-walled cylinder under internal pressure'),
  ],
  notes: ['Keep the growth below the shrinkage of the part’s wall, or the relaxing cavity grips the part.'],
  cautions: [{ says: PRESSED_PLATE }],
  related: ['PLATE.WALL', 'SEAT.SINK', 'DOWEL.PRESS'],
});

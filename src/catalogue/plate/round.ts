import { choice, derived, formula, fromMemory, input } from '../../core/define';
import { plateMetal, pressure, PRESSED_PLATE } from './inputs';

export const plateRound = formula({
  name: 'PLATE.ROUND',
  summary: 'Sag in the middle of a round plate or insert floor under even pressure.',
  inputs: [
    input('radius', 'a', 'length', {
      above: '0 mm',
      usual: ['1 mm', '400 mm'],
      says: 'Radius to the support',
    }),
    input('thickness', 't', 'length', {
      above: '0 mm',
      usual: ['0.5 mm', '150 mm'],
      says: 'Thickness of the plate or floor',
    }),
    pressure,
    plateMetal,
    choice('edge', ['supported', 'clamped'], {
      default: 'supported',
      says: 'Edge that rests on a seat (supported) or is one with a stiff ring (clamped)',
    }),
  ],
  steps: {
    D: {
      gives: 'torque',
      expr: 'E*t^3/(12*(1 - nu^2))',
      says: 'Stiffness of the plate in bending, a moment for each unit of width and curvature',
    },
    n: {
      gives: 'ratio',
      by: 'edge',
      cases: { supported: '4', clamped: '7' },
      says: 'Radius over thickness from which shear may be left out: it adds a tenth there',
    },
    sigma: {
      gives: 'pressure',
      by: 'edge',
      cases: { supported: '3*(3 + nu)*p*a^2/(8*t^2)', clamped: '0.75*p*a^2/t^2' },
      says: 'Highest bending stress, in the middle or at the clamped edge',
    },
    z: {
      gives: 'length',
      by: 'edge',
      cases: {
        supported: 'p*a^4*(5 + nu)/(64*(1 + nu)*D)',
        clamped: 'p*a^4/(64*D)',
      },
      says: 'Thin plate under even pressure, in the middle',
    },
  },
  result: 'z',
  strength: [{ stress: 'sigma', of: 'metal' }],
  valid: [
    {
      holds: 'a >= n*t',
      says: 'The plate is thick for its radius, above a quarter of it supported, a seventh clamped: shear, which is left out, adds to the sag.',
    },
    { holds: 'z <= t/4', says: 'The sag is large against the thickness: the equation is for small sags.' },
  ],
  changes: [
    {
      basis: 2,
      says: 'A clamped plate is in range from a radius of 7 thicknesses, before from 4; its sag is as it was.',
    },
  ],
  sources: [
    derived('Kirchhoff plate, axially symmetric'),
    fromMemory('Roark, Formulas for Stress and Strain, flat round plates under even pressure'),
  ],
  notes: [
    'A floor machined in one with its insert lies between the two: no ring is quite stiff. Take supported for a careful answer.',
  ],
  cautions: [{ says: PRESSED_PLATE }],
  related: ['PLATE.SAG', 'PLATE.RING', 'FILL.VENT'],
});

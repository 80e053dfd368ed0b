import { derived, formula, input } from '../../core/define';
import { metal } from '../metals';
import { pinDia } from './inputs';

export const dowelPress = formula({
  name: 'DOWEL.PRESS',
  summary: 'Force that presses a dowel into its hole.',
  inputs: [
    pinDia,
    input('interference', 'delta', 'length', {
      min: '0 mm',
      usual: ['0 mm', '0.1 mm'],
      says: 'Pin diameter less hole diameter',
    }),
    input('length', 'L', 'length', { above: '0 mm', usual: ['1 mm', '200 mm'], says: 'Length in the hole' }),
    input('blockDia', 'D', 'length', {
      above: '0 mm',
      usual: ['2 mm', '1 m'],
      says: 'Outer diameter of the metal around the hole: twice the distance to the nearest edge',
    }),
    metal('pinMetal', 'i', 'Metal of the pin'),
    metal('blockMetal', 'o', 'Metal of the block'),
    input('friction', 'mu', 'ratio', {
      min: 0,
      max: 1,
      usual: [0.05, 0.4],
      says: 'Coefficient of friction while it is pressed in',
    }),
  ],
  refuse: [{ when: 'D <= d', argument: 'blockDia', says: 'must be larger than {pinDia}' }],
  steps: {
    C: {
      gives: 'reciprocalPressure',
      expr: '((D^2 + d^2)/(D^2 - d^2) + nu_o)/E_o + (1 - nu_i)/E_i',
      says: 'Compliance of ring and pin',
    },
    p: { gives: 'pressure', expr: 'delta/(d*C)', says: 'Contact pressure' },
    sigma_v: {
      gives: 'pressure',
      expr: 'p*sqrt(3*D^4 + d^4)/(D^2 - d^2)',
      says: 'Stress of the block at the hole by von Mises, hoop stress and pressure together',
    },
    F: { gives: 'force', expr: 'mu*p*pi*d*L', says: 'Friction on the whole contact' },
  },
  result: 'F',
  strength: [
    { stress: 'sigma_v', of: 'blockMetal' },
    { stress: 'p', of: 'pinMetal' },
  ],
  valid: [
    {
      holds: 'p < 0.001*E_o',
      says: 'The contact pressure is more than a thousandth of the block’s modulus: the hole yields, and the force is less.',
    },
  ],
  sources: [
    derived('Lamé’s thick cylinder: press fit of a solid pin in a ring'),
    derived('Coulomb friction over the contact'),
  ],
  notes: [
    'Take the interference from the limits of pin and hole: FIT.GAP with "H7/m6" gives the range, and a minus is interference.',
  ],
  cautions: [
    {
      says: 'A pin pressed in or driven out can jump: guard it, and drive it along its axis only. Blind holes trap air and oil.',
    },
  ],
  related: ['FIT.GAP', 'DOWEL.SHEAR'],
});

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
    F: { gives: 'force', expr: 'mu*p*pi*d*L', says: 'Friction on the whole contact' },
  },
  result: 'F',
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
  checks: [
    {
      given: {
        pinDia: '8 mm',
        interference: '0.015 mm',
        length: '16 mm',
        blockDia: '24 mm',
        pinMetal: '207 GPa',
        blockMetal: '7075-T6',
        friction: 0.12,
      },
      expect: '3559.61166517 N',
      within: 1e-5,
      from: 'by hand from Lamé: p = 0.015/(8 × ((640/512 + 0.33)/71700 + 0.7/207000)) = 73.77 MPa, × 0.12 × π × 8 × 16',
    },
    {
      given: {
        pinDia: '6 mm',
        interference: '0.008 mm',
        length: '14 mm',
        blockDia: '22 mm',
        pinMetal: 'H13',
        blockMetal: '6061-T6',
        friction: 0.15,
      },
      expect: '2113.75063375 N',
      within: 1e-6,
      from: 'by hand from Lamé: p = 0.008/(6 × ((520/448 + 0.33)/68900 + 0.7/210000)), × 0.15 × π × 6 × 14',
    },
    {
      given: {
        pinDia: '8 mm',
        interference: '0 mm',
        length: '16 mm',
        blockDia: '24 mm',
        pinMetal: 'H13',
        blockMetal: 'P20',
        friction: 0.12,
      },
      expect: '0 N',
      from: 'without interference it drops in',
      limit: true,
    },
  ],
});

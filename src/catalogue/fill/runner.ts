import { commonPractice, constant, formula, fromMemory, input } from '../../core/define';

export const fillRunner = formula({
  name: 'FILL.RUNNER',
  summary: 'Diameter of a round runner from what flows through it and how far: a rule of thumb.',
  inputs: [
    input('partMass', 'm', 'mass', {
      above: '0 g',
      usual: ['0.2 g', '500 g'],
      says: 'Mass of all that this runner feeds',
    }),
    input('length', 'L', 'length', {
      above: '0 mm',
      usual: ['2 mm', '500 mm'],
      says: 'Length of the runner',
    }),
  ],
  constants: { m_c: constant('mass', '200 g', 'Largest part of the rule') },
  steps: {
    d: {
      gives: 'length',
      expr: 'sqrt(m)*L^0.25/3.7',
      fitted: { units: { m: 'g', L: 'mm' }, out: 'mm' },
      says: 'Rule in grams and millimeters',
    },
  },
  result: 'd',
  valid: [{ holds: 'm <= m_c', says: 'The rule is for parts up to 200 g.' }],
  sources: [
    commonPractice('Runner rule of molding handbooks, for walls under 3 mm and parts under 200 g'),
    fromMemory('its constant 3.7 in grams and millimeters'),
  ],
  notes: [
    'Round up to a cutter that you have, and not below the part’s wall: a runner that freezes before the part ends the packing. ' +
      'FILL.TUBEDROP says what it takes of a press’s small pressure; widen the runner where it takes too much.',
  ],
  related: ['FILL.TUBEDROP', 'FILL.TUBERATE', 'FILL.GATE'],
});

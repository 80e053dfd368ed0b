import { constant, derived, formula, input } from '../../core/define';

export const fillBurn = formula({
  name: 'FILL.BURN',
  summary: 'Temperature of the air that the melt shuts into a blocked vent.',
  inputs: [
    input('pressureRatio', 'r', 'ratio', {
      above: 0,
      usual: [1, 1000],
      says: 'Absolute pressure of the shut-in air over that of the room',
    }),
    input('startTemp', 'T_1', 'temperature', {
      above: '0 K',
      default: '20 °C',
      usual: ['0 °C', '200 °C'],
      says: 'Temperature of the air before',
    }),
  ],
  constants: {
    gamma: constant('ratio', 1.4, 'Ratio of the specific heats of air'),
    T_c: constant('temperature', '250 °C', 'Where most resins char'),
  },
  steps: {
    T_2: {
      gives: 'temperature',
      expr: 'T_1*r^((gamma - 1)/gamma)',
      says: 'Compression without loss of heat',
    },
  },
  result: 'T_2',
  valid: [{ holds: 'r >= 1', says: 'A ratio below 1 is expansion: no vent does that.' }],
  sources: [
    derived('First law for a perfect gas compressed without loss of heat: T₂/T₁ = (p₂/p₁)^((γ−1)/γ)'),
  ],
  notes: [
    'An upper bound: air that has time to give its heat to melt and steel stays cooler. A few hundred degrees are enough to char a resin ' +
      'and pit the steel, so the cure is a vent where the flow ends, not a slower look at the burn.',
    'The ratio is of absolute pressures: 9 bar on the gauge is a ratio of about 10.',
  ],
  cautions: [
    {
      when: 'T_2 > T_c',
      says: 'Above about 250 °C most resins char: the end of the flow burns and the steel there pits. Vent it: FILL.VENT, FILL.VENTFLOW.',
    },
  ],
  related: ['FILL.VENT', 'FILL.VENTFLOW'],
});

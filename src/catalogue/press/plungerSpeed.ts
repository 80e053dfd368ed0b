import { constant, derived, formula, fromMemory, input } from '../../core/define';
import { AIR_CAUTION, airBore, airPressure, MELT_CAUTION } from './inputs';

export const pressPlungerSpeed = formula({
  name: 'PRESS.PLUNGERSPEED',
  summary: 'Plunger speed that the air flow through the valve allows.',
  inputs: [
    airPressure,
    airBore,
    input('sonicConductance', 'C', 'sonicConductance', {
      above: '0 L/(s·bar)',
      usual: ['0.05 L/(s·bar)', '60 L/(s·bar)'],
      says: 'Sonic conductance of valve, fittings and hose together, from their data sheets; in L/(s·bar) in both systems',
    }),
    input('cylinderPressure', 'p_c', 'pressure', {
      min: '0 MPa',
      default: '0 MPa',
      usual: ['0 MPa', '1.5 MPa'],
      says: 'Pressure in the cylinder while it moves, as a gauge shows it: what the melt resists with',
    }),
    input('criticalRatio', 'b', 'ratio', {
      min: 0,
      below: 1,
      default: 0.3,
      usual: [0.1, 0.6],
      says: 'Ratio of the pressures below which the flow is choked, from the data sheet',
    }),
  ],
  constants: {
    p_n: constant('pressure', '1 atm', 'Standard atmosphere, ISO 2533, on top of what a gauge shows'),
    p_0: constant('pressure', '100 kPa', 'Pressure at which a flow of free air is counted, ISO 6358-1'),
  },
  refuse: [
    {
      when: 'p_c >= p_a',
      argument: 'cylinderPressure',
      says: 'must be less than {airPressure}: no pressure drop is left, and the plunger stands',
    },
  ],
  steps: {
    r: { gives: 'ratio', expr: '(p_c + p_n)/(p_a + p_n)', says: 'Ratio of the absolute pressures' },
    f: {
      gives: 'ratio',
      expr: 'r <= b ? 1 : sqrt(1 - ((r - b)/(1 - b))^2)',
      says: 'Part of the choked flow: 1 below the critical ratio, then along an ellipse',
    },
    q: { gives: 'flow', expr: 'C*(p_a + p_n)*f', says: 'Flow of free air' },
    v: {
      gives: 'speed',
      expr: 'q*p_0/(p_c + p_n)/(pi*D^2/4)',
      says: 'The same air at the pressure in the cylinder, over the piston, without change of temperature',
    },
  },
  result: 'v',
  sources: [
    fromMemory('ISO 6358-1: flow of compressed air by sonic conductance and critical ratio'),
    derived('Boyle’s law from free air at 100 kPa to the pressure in the cylinder'),
  ],
  notes: [
    'An upper bound: the plunger goes no faster than its air arrives. Melt, seals and mass slow it as well.',
    'Conductances in a row add as 1/C³ = 1/C₁³ + 1/C₂³, roughly; a long hose is often the least of them (common practice).',
  ],
  cautions: [{ says: AIR_CAUTION }, { says: MELT_CAUTION }],
  related: ['PRESS.INJECTION', 'PRESS.AIRUSE', 'FILL.REACH'],
});

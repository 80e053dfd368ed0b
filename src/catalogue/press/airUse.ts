import { constant, derived, formula, input } from '../../core/define';
import { AIR_CAUTION, airBore, airPressure, rodDia, rodFits } from './inputs';

export const pressAirUse = formula({
  name: 'PRESS.AIRUSE',
  summary: 'Free air that one double stroke takes.',
  inputs: [
    airPressure,
    airBore,
    rodDia,
    input('stroke', 's', 'length', {
      min: '0 mm',
      usual: ['5 mm', '500 mm'],
      says: 'Stroke of the cylinder',
    }),
  ],
  constants: { p_n: constant('pressure', '1 atm', 'Standard atmosphere, ISO 2533') },
  refuse: [rodFits],
  steps: {
    A: { gives: 'area', expr: 'pi/4*(2*D^2 - d_r^2)', says: 'Piston one way, ring around the rod the other' },
    V: { gives: 'gasVolume', expr: 'A*s*(p_a + p_n)/p_n', says: 'Volume swept, let down to the atmosphere' },
  },
  result: 'V',
  sources: [derived('Boyle’s law, from absolute pressure p + 101325 Pa to the atmosphere')],
  notes: ['Hoses and dead ends come on top. In liters or cubic feet of free air.'],
  cautions: [{ says: AIR_CAUTION }],
  related: ['PRESS.RETURN'],
});

import { constant, derived, formula, fromMemory, input } from '../../core/define';

export const fillVentFlow = formula({
  name: 'FILL.VENTFLOW',
  summary: 'Air that a vent lets out at a small overpressure.',
  inputs: [
    input('width', 'W', 'length', {
      above: '0 mm',
      usual: ['0.5 mm', '500 mm'],
      says: 'Width of the vent, of all vents together',
    }),
    input('depth', 'h', 'length', {
      above: '0 mm',
      usual: ['0.002 mm', '0.2 mm'],
      says: 'Depth of the vent',
    }),
    input('land', 'L', 'length', {
      above: '0 mm',
      usual: ['0.2 mm', '15 mm'],
      says: 'Length of its land, up to the relief',
    }),
    input('overpressure', 'p', 'pressure', {
      min: '0 MPa',
      usual: ['0 MPa', '0.2 MPa'],
      says: 'Pressure of the air in the cavity above that outside',
    }),
  ],
  constants: {
    mu: constant('viscosity', '1.8e-5 Pa·s', 'Viscosity of air at room temperature'),
    p_n: constant('pressure', '1 atm', 'Standard atmosphere'),
    v_c: constant('speed', '100 m/s', 'Speed of air from which inertia counts'),
  },
  steps: {
    v: { gives: 'speed', expr: 'h^2*p/(12*mu*L)', says: 'Mean speed of viscous flow between two walls' },
    Q: { gives: 'flow', expr: 'v*W*h', says: 'Through the whole width' },
  },
  result: 'Q',
  valid: [
    {
      holds: 'p <= 0.2*p_n',
      says: 'The overpressure is more than a fifth of an atmosphere: the air thins on its way out, and the flow is only a rough figure.',
    },
    {
      holds: 'v <= v_c',
      says: 'The air would be faster than 100 m/s: inertia counts, and the vent passes less than this.',
    },
    { holds: 'L >= 10*h', says: 'The land is shorter than ten depths: the flow is not viscous all through.' },
  ],
  sources: [
    derived('Plane Poiseuille flow: Q = W h³ p/(12 µ L)'),
    fromMemory('Viscosity of air 1.8e-5 Pa·s at 20 °C; it grows by about a tenth to 60 °C'),
  ],
  notes: [
    'Depth counts with its third power: a vent that has lost a fifth of its depth to deposit lets out half as much.',
    'The cavity must lose its volume of air in the time of filling: compare with the flow of melt.',
  ],
  related: ['FILL.VENT', 'FILL.BURN', 'PIN.FLASH'],
});

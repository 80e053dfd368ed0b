import { formula, input } from '../../core/define';
import { AIR, airSpeed, depth, land, VENT_RANGE, VENT_SOURCES } from './vents';

export const fillVentFlow = formula({
  name: 'FILL.VENTFLOW',
  summary: 'Air that a vent lets out at a small overpressure.',
  inputs: [
    input('width', 'W', 'length', {
      above: '0 mm',
      usual: ['0.5 mm', '500 mm'],
      says: 'Width of the vent, of all vents together',
    }),
    depth,
    land,
    input('overpressure', 'p', 'pressure', {
      min: '0 MPa',
      usual: ['0 MPa', '0.2 MPa'],
      says: 'Pressure of the air in the cavity above that outside',
    }),
  ],
  constants: AIR,
  steps: {
    ...airSpeed,
    Q: { gives: 'flow', expr: 'v*W*h', says: 'Through the whole width' },
  },
  result: 'Q',
  valid: VENT_RANGE,
  sources: VENT_SOURCES,
  notes: [
    'Depth counts with its third power: a vent that has lost a fifth of its depth to deposit lets out half as much.',
    'The cavity must lose its volume of air in the time of filling: FILL.VENTWIDTH gives the width that lets it.',
  ],
  related: ['FILL.VENTWIDTH', 'FILL.VENT', 'FILL.BURN', 'PIN.FLASH'],
});

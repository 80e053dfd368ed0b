import { formula, input } from '../../core/define';
import { AIR, airSpeed, depth, land, VENT_RANGE, VENT_SOURCES } from './vents';

export const fillVentWidth = formula({
  name: 'FILL.VENTWIDTH',
  summary: 'Width of all vents together that lets the air of a cavity out in time.',
  inputs: [
    input('airVolume', 'V', 'volume', {
      min: '0 cm³',
      usual: ['0.05 cm³', '500 cm³'],
      says: 'Air that must leave: of cavity, runner and sprue',
    }),
    input('fillTime', 't', 'time', {
      above: '0 s',
      usual: ['0.05 s', '30 s'],
      says: 'Time of filling',
    }),
    depth,
    land,
    input('overpressure', 'p', 'pressure', {
      above: '0 MPa',
      usual: ['0.001 MPa', '0.2 MPa'],
      says: 'Pressure above that outside that the air in the cavity may reach',
    }),
  ],
  constants: AIR,
  steps: {
    ...airSpeed,
    Q: { gives: 'flow', expr: 'V/t', says: 'Air that must leave in a second' },
    W: { gives: 'length', expr: 'Q/(v*h)', says: 'Width that passes it' },
  },
  result: 'W',
  valid: VENT_RANGE,
  sources: VENT_SOURCES,
  notes: [
    'The inverse of FILL.VENTFLOW. Depth counts with its third power: half the depth asks for eight times the width.',
    'Gaps at ejector pins, inserts and the parting line let air out as well, until deposit closes them: put the vents where the melt arrives last.',
  ],
  cautions: [
    {
      says: 'Air that cannot leave is heated as it is pressed together and burns the part: FILL.BURN.',
    },
  ],
  related: ['FILL.VENTFLOW', 'FILL.VENT', 'FILL.BURN'],
});

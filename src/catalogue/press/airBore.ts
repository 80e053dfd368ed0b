import { formula, input } from '../../core/define';
import { AIR_CAUTION, AIR_FORCE, airPressure, efficiency, plungerDia, SEAL_LOSS } from './inputs';

export const pressAirBore = formula({
  name: 'PRESS.AIRBORE',
  summary: 'Air bore that it takes to make a melt pressure.',
  inputs: [
    input('meltPressure', 'p', 'pressure', {
      min: '0 MPa',
      usual: ['1 MPa', '150 MPa'],
      says: 'Melt pressure wanted',
    }),
    { ...airPressure, reading: { ...airPressure.reading, as: 'quantity', kind: 'pressure', above: '0 MPa' } },
    plungerDia,
    efficiency,
  ],
  steps: {
    D: { gives: 'length', expr: 'd*sqrt(p/(eta*p_a))', says: 'Areas in the ratio of the pressures' },
  },
  result: 'D',
  sources: [AIR_FORCE, SEAL_LOSS],
  notes: [
    'Standard bores are 32, 40, 50, 63, 80, 100, 125 and 160 mm (ISO 15552, from memory): take the next larger.',
  ],
  cautions: [{ says: AIR_CAUTION }],
  related: ['PRESS.INJECTION'],
});

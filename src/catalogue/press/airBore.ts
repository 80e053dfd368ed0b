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
  checks: [
    {
      given: { meltPressure: '40 MPa', airPressure: '0.6 MPa', plungerDia: '20 mm', efficiency: 1 },
      expect: '163.2993 mm',
      within: 1e-6,
      from: 'by hand: 20 × √(40/0.6)',
    },
    {
      given: { meltPressure: '3000 psi', airPressure: '90 psi', plungerDia: '0.75 in', efficiency: 0.9 },
      expect: '4.56435464588 in',
      within: 1e-9,
      from: 'by hand: 0.75 × √(3000/81)',
    },
    {
      given: { meltPressure: '0.6 MPa', airPressure: '0.6 MPa', plungerDia: '20 mm', efficiency: 1 },
      expect: '20 mm',
      within: 1e-12,
      from: 'the air’s own pressure takes the plunger’s own bore',
      limit: true,
    },
  ],
});

import { formula } from '../../core/define';
import {
  cavityPressure,
  CLAMP_CAUTION,
  MARGIN,
  margin,
  OPENING,
  openingForce,
  projectedArea,
} from './inputs';

export const clampForce = formula({
  name: 'CLAMP.FORCE',
  summary: 'Clamp force that holds the mold shut.',
  inputs: [projectedArea, cavityPressure, margin],
  steps: { ...openingForce, F: { gives: 'force', expr: 'S*F_o', says: 'With the margin' } },
  result: 'F',
  sources: [OPENING, MARGIN],
  notes: [
    'Design for the pressure that the press can make where that is lower than what the resin usually takes: CLAMP.PRESSURE.',
  ],
  cautions: [{ says: CLAMP_CAUTION }],
  related: ['CLAMP.TONNAGE', 'CLAMP.PRESSURE', 'CLAMP.SPARE', 'CLAMP.MAXAREA'],
  checks: [
    {
      given: { projectedArea: '900 mm²', cavityPressure: '25 MPa' },
      expect: '27 kN',
      within: 1e-9,
      from: 'by hand: 900 × 25 × 1.2',
    },
    {
      given: { projectedArea: '2 in²', cavityPressure: '1500 psi', margin: 1.25 },
      expect: '3750 lbf',
      within: 1e-9,
      from: 'by hand: 2 × 1500 × 1.25',
    },
    {
      given: { projectedArea: '250 mm²', cavityPressure: '20 MPa', margin: 1 },
      expect: '5 kN',
      within: 1e-12,
      from: 'without a margin it is pressure times area',
      limit: true,
    },
  ],
});

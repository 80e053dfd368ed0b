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

export const clampTonnage = formula({
  name: 'CLAMP.TONNAGE',
  summary: 'Clamp force that holds the mold shut, in tons of the system.',
  inputs: [projectedArea, cavityPressure, margin],
  steps: { ...openingForce, F: { gives: 'tonnage', expr: 'S*F_o', says: 'With the margin' } },
  result: 'F',
  sources: [OPENING, MARGIN],
  notes: ['In inch units a ton is 2000 lbf, in metric units a tonne-force of 9806.65 N.'],
  cautions: [{ says: CLAMP_CAUTION }],
  related: ['CLAMP.FORCE', 'CLAMP.PRESSURE', 'CLAMP.SPARE', 'PRESS.INJECTION'],
  checks: [
    {
      given: { projectedArea: '2 in²', cavityPressure: '1500 psi', margin: 1.25 },
      expect: '1.875 tonf',
      within: 1e-9,
      from: 'by hand: 2 × 1500 × 1.25/2000',
    },
    {
      given: { projectedArea: '1200 mm²', cavityPressure: '10 MPa' },
      expect: '1.46839134669 tf',
      within: 1e-9,
      from: 'by hand: 1200 × 10 × 1.2/9806.65',
    },
    {
      given: { projectedArea: '1200 mm²', cavityPressure: '0 MPa' },
      expect: '0 tf',
      from: 'no pressure, no force',
      limit: true,
    },
  ],
});

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
});

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
});

import { formula, input } from '../../core/define';
import {
  consistency,
  CONSTANTS,
  gap,
  HOT_MELT,
  ISOTHERMAL,
  powerIndex,
  RABINOWITSCH,
  RATE_CEILING,
  rateCeiling,
  slitWall,
  wallStress,
} from './inputs';

export const fillReach = formula({
  name: 'FILL.REACH',
  summary: 'Flow length at which a wall has used up the pressure, with the front at a steady speed.',
  inputs: [
    input('pressure', 'p', 'pressure', {
      min: '0 MPa',
      usual: ['0.5 MPa', '150 MPa'],
      says: 'Pressure at the gate: what the press makes less what runner and gate take',
    }),
    gap,
    input('frontSpeed', 'v', 'speed', {
      above: '0 mm/s',
      usual: ['2 mm/s', '1500 mm/s'],
      says: 'Speed of the melt front',
    }),
    consistency,
    powerIndex,
  ],
  constants: rateCeiling,
  steps: {
    gamma_a: {
      gives: 'shearRate',
      expr: '6*v/h',
      says: 'Apparent rate at the wall, as if the melt were Newtonian',
    },
    ...slitWall,
    ...wallStress,
    L: {
      gives: 'length',
      expr: 'p*h/(2*tau_w)',
      says: 'Force balance of the melt between the two walls',
    },
  },
  result: 'L',
  valid: [
    { holds: 'L >= h', says: 'It stops within one gap of the gate: no developed flow to reckon with.' },
  ],
  sources: [RABINOWITSCH],
  notes: [
    'This is where the pressure ends the flow. Cooling may end it sooner: at this front speed the melt needs length over speed to get there; ' +
      'where FILL.FROZEN on both sides after that time nears the gap, the flow freezes first. A slower front needs less pressure and freezes sooner: try both.',
    ISOTHERMAL,
    CONSTANTS,
  ],
  cautions: [RATE_CEILING, HOT_MELT],
  related: ['FILL.FROZEN', 'FILL.SLITDROP', 'PRESS.INJECTION'],
});

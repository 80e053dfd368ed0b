import { formula } from '../../core/define';
import {
  AIR_CAUTION,
  AIR_FORCE,
  airBore,
  airPressure,
  efficiency,
  rodDia,
  rodFits,
  SEAL_LOSS,
} from './inputs';

export const pressReturn = formula({
  name: 'PRESS.RETURN',
  summary: 'Force with which an air cylinder pulls its plunger back.',
  inputs: [airPressure, airBore, rodDia, efficiency],
  refuse: [rodFits],
  steps: {
    A: { gives: 'area', expr: 'pi/4*(D^2 - d_r^2)', says: 'Ring of the piston around the rod' },
    F: { gives: 'force', expr: 'eta*p_a*A', says: 'Air on it, less what the seals take' },
  },
  result: 'F',
  sources: [AIR_FORCE, SEAL_LOSS],
  cautions: [{ says: AIR_CAUTION }],
  related: ['PRESS.INJECTION', 'PRESS.AIRUSE'],
});

import type { Definition } from '../../core/define';
import { shoulderTravel } from './travel';
import { shoulderValue } from './value';

/** Shoulder screws as guides and stops. */
export const shoulder: readonly Definition[] = [shoulderValue, shoulderTravel];

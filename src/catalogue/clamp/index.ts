import type { Definition } from '../../core/define';
import { clampForce } from './force';
import { clampGap } from './gap';
import { clampMaxArea } from './maxArea';
import { clampPressure } from './pressure';
import { clampSpare } from './spare';
import { clampTonnage } from './tonnage';

/** Holding the mold shut. */
export const clamp: readonly Definition[] = [
  clampPressure,
  clampForce,
  clampTonnage,
  clampMaxArea,
  clampSpare,
  clampGap,
];

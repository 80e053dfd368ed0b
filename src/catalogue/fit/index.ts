import type { Definition } from '../../core/define';
import { fitClearHole } from './clearHole';
import { fitGap } from './gap';
import { fitGrade } from './grade';
import { fitLimits } from './limits';
import { fitLower } from './lower';
import { fitName } from './name';
import { fitPosition } from './position';
import { fitUpper } from './upper';

/** Size on size: limits and fits. */
export const fit: readonly Definition[] = [
  fitUpper,
  fitLower,
  fitLimits,
  fitGap,
  fitGrade,
  fitName,
  fitPosition,
  fitClearHole,
];

import { showBasis, showCaution, showCheck, showSource, showWork } from './show';
import type { Tool } from './tool';
import { trySolve } from './trySolve';
import { trySpread } from './trySpread';
import { trySwing } from './trySwing';
import { tryTable } from './tryTable';
import { unitConvert } from './unitConvert';

/** The functions about functions: what-if, and showing the work. */
export const tools: readonly Tool[] = [
  tryTable,
  trySolve,
  trySwing,
  trySpread,
  showWork,
  showSource,
  showCaution,
  showCheck,
  showBasis,
  unitConvert,
];

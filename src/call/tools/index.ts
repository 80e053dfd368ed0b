import { showBasis, showCaution, showCheck, showSource, showWork } from './show';
import { showMargin } from './showMargin';
import { showStep } from './showStep';
import { showUnit } from './showUnit';
import type { Tool } from './tool';
import { tryMatch } from './tryMatch';
import { trySolve } from './trySolve';
import { trySpread } from './trySpread';
import { trySwing } from './trySwing';
import { tryTable } from './tryTable';
import { unitConvert } from './unitConvert';
import { unitFormula } from './unitFormula';

/** The functions about functions: what-if, and showing the work. */
export const tools: readonly Tool[] = [
  tryTable,
  trySolve,
  trySwing,
  trySpread,
  tryMatch,
  showWork,
  showSource,
  showCaution,
  showCheck,
  showMargin,
  showStep,
  showUnit,
  showBasis,
  unitConvert,
  unitFormula,
];

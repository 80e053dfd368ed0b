import type { Definition } from '../../core/define';
import { costBreakEven } from './breakEven';
import { costCycle } from './cycle';
import { costPart } from './part';

/** Time and money. */
export const cost: readonly Definition[] = [costCycle, costPart, costBreakEven];

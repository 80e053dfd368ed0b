import type { Definition } from '../../core/define';
import { coolCycle } from './cycle';
import { coolMoldTemp } from './moldTemp';
import { coolRise } from './rise';
import { coolTime } from './time';
import { coolTimeRound } from './timeRound';

/** Heat of part and mold. */
export const cool: readonly Definition[] = [coolTime, coolTimeRound, coolMoldTemp, coolCycle, coolRise];

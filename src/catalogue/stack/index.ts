import type { Definition } from '../../core/define';
import { stackBender } from './bender';
import { stackCpk } from './cpk';
import { stackRss } from './rss';
import { stackShift } from './shift';
import { stackTrials } from './trials';
import { stackWorst } from './worst';
import { stackYield } from './yield';

/** Tolerances on tolerances. */
export const stack: readonly Definition[] = [
  stackWorst,
  stackRss,
  stackBender,
  stackTrials,
  stackYield,
  stackCpk,
  stackShift,
];

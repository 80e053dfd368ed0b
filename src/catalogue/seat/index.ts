import type { Definition } from '../../core/define';
import { seatForce } from './force';
import { seatFreeDraft } from './freeDraft';
import { seatHeight } from './height';
import { seatRelease } from './release';
import { seatSink } from './sink';
import { seatStep } from './step';

/** A tapered insert in its pocket. */
export const seat: readonly Definition[] = [seatForce, seatRelease, seatFreeDraft, seatSink, seatStep, seatHeight];

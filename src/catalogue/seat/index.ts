import type { Definition } from '../../core/define';
import { seatBallWidth } from './ballWidth';
import { seatClear } from './clear';
import { seatForce } from './force';
import { seatFreeDraft } from './freeDraft';
import { seatHeatDrop } from './heatDrop';
import { seatHeight } from './height';
import { seatHoop } from './hoop';
import { seatLift } from './lift';
import { seatMillPush } from './millPush';
import { seatPinWidth } from './pinWidth';
import { seatPressure } from './pressure';
import { seatPush } from './push';
import { seatPushOut } from './pushOut';
import { seatRelease } from './release';
import { seatSink } from './sink';
import { seatSlideBack } from './slideBack';
import { seatSpread } from './spread';
import { seatStep } from './step';
import { seatStiffness } from './stiffness';
import { seatWedgeSink } from './wedgeSink';

/** A tapered insert in its pocket. */
export const seat: readonly Definition[] = [
  seatForce,
  seatSpread,
  seatPressure,
  seatRelease,
  seatFreeDraft,
  seatSink,
  seatWedgeSink,
  seatStiffness,
  seatStep,
  seatMillPush,
  seatPushOut,
  seatHeight,
  seatHeatDrop,
  seatSlideBack,
  seatClear,
  seatLift,
  seatPush,
  seatHoop,
  seatBallWidth,
  seatPinWidth,
];

import type { Definition } from '../../core/define';
import { pinBuckle } from './buckle';
import { pinFlash } from './flash';
import { pinLength } from './length';
import { pinSide } from './side';
import { pinStand } from './stand';
import { pinStepBuckle } from './stepBuckle';
import { pinValue } from './value';

/** Ejector pins. */
export const pin: readonly Definition[] = [
  pinBuckle,
  pinLength,
  pinStand,
  pinFlash,
  pinStepBuckle,
  pinSide,
  pinValue,
];

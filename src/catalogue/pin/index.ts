import type { Definition } from '../../core/define';
import { pinBuckle } from './buckle';
import { pinFlash } from './flash';
import { pinLength } from './length';
import { pinStand } from './stand';

/** Ejector pins. */
export const pin: readonly Definition[] = [pinBuckle, pinLength, pinStand, pinFlash];

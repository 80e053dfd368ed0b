import { ejectorPins } from './ejector-pins';
import { plates } from './plates';
import { pressFitUp } from './press-fit-up';
import { pushOutInsert } from './push-out-insert';
import type { Design } from './sheet';

/** Every design sheet. */
export const designs: readonly Design[] = [pushOutInsert, ejectorPins, plates, pressFitUp];

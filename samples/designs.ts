import type { Design } from './sheet';
import { pushOutInsert } from './push-out-insert';

/** Every design sheet. */
export const designs: readonly Design[] = [pushOutInsert];

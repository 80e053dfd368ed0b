import type { Definition } from '../../core/define';
import { springPreload } from './preload';
import { springShim } from './shim';

/** Springs that pull an insert home. */
export const spring: readonly Definition[] = [springPreload, springShim];

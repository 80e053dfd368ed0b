import type { Definition } from '../../core/define';
import { flushStock } from './stock';

/** Finishing an insert flush in place. */
export const flush: readonly Definition[] = [flushStock];

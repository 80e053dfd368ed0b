import type { Definition } from '../../core/define';
import { flushPasses } from './passes';
import { flushStock } from './stock';

/** Finishing an insert flush in place. */
export const flush: readonly Definition[] = [flushStock, flushPasses];

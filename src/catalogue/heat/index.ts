import type { Definition } from '../../core/define';
import { heatGrowth } from './growth';
import { heatMismatch } from './mismatch';

/** What warming does to sizes. */
export const heat: readonly Definition[] = [heatGrowth, heatMismatch];

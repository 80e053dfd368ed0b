import type { Definition } from '../../core/define';
import { edgeCenter } from './center';
import { edgeMiddle } from './middle';

/** Finding edges and middles on the machine. */
export const edge: readonly Definition[] = [edgeMiddle, edgeCenter];

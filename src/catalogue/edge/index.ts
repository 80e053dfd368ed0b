import type { Definition } from '../../core/define';
import { edgeCentre } from './centre';
import { edgeMiddle } from './middle';

/** Finding edges and middles on the machine. */
export const edge: readonly Definition[] = [edgeMiddle, edgeCentre];

import type { Definition } from '../../core/define';
import { shrinkCavity } from './cavity';
import { shrinkPart } from './part';
import { shrinkScatter } from './scatter';

/** From the part’s size to the cavity’s and back. */
export const shrink: readonly Definition[] = [shrinkCavity, shrinkPart, shrinkScatter];

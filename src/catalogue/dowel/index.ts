import type { Definition } from '../../core/define';
import { dowelPress } from './press';
import { dowelShear } from './shear';
import { dowelValue } from './value';

/** Dowel pins. */
export const dowel: readonly Definition[] = [dowelShear, dowelPress, dowelValue];

import type { Definition } from '../../core/define';
import { metalValue } from './value';

/** The table of metals. */
export const metal: readonly Definition[] = [metalValue];

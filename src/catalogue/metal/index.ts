import type { Definition } from '../../core/define';
import { metalMargin } from './margin';
import { metalValue } from './value';

/** The table of metals. */
export const metal: readonly Definition[] = [metalValue, metalMargin];

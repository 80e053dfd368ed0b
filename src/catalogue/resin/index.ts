import type { Definition } from '../../core/define';
import { resinValueOf } from './value';

/** The table of resins. */
export const resin: readonly Definition[] = [resinValueOf];

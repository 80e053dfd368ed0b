import type { Definition } from '../../core/define';
import { clampTonnage } from './tonnage';

/** Holding the mold shut. */
export const clamp: readonly Definition[] = [clampTonnage];

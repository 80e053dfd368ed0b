import type { Definition } from '../../core/define';
import { tapDrill } from './drill';
import { tapDrillName } from './drillName';

/** Tapped holes. */
export const tap: readonly Definition[] = [tapDrill, tapDrillName];

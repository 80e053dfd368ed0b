import type { Definition } from '../../core/define';
import { tapDepth } from './depth';
import { tapDrill } from './drill';
import { tapDrillName } from './drillName';
import { tapFeed } from './feed';
import { tapPercent } from './percent';
import { tapPipe } from './pipe';
import { tapTorque } from './torque';
import { tapTravel } from './travel';

/** Tapped holes. */
export const tap: readonly Definition[] = [
  tapDrill,
  tapDrillName,
  tapPercent,
  tapDepth,
  tapTravel,
  tapTorque,
  tapFeed,
  tapPipe,
];

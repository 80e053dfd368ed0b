import type { Definition } from '../core/define';
import { clampTonnage } from './clamp/tonnage';
import { flushStock } from './flush/stock';
import { seatForce } from './seat/force';
import { seatFreeDraft } from './seat/freeDraft';
import { seatHeight } from './seat/height';
import { seatRelease } from './seat/release';
import { seatSink } from './seat/sink';
import { seatStep } from './seat/step';
import { springPreload } from './spring/preload';
import { springShim } from './spring/shim';
import { tapDrill } from './tap/drill';
import { tapDrillName } from './tap/drillName';

/** Every function, by family, in the order in which a person would look for it. */
export const catalogue: readonly Definition[] = [
  seatForce,
  seatRelease,
  seatFreeDraft,
  seatSink,
  seatStep,
  seatHeight,
  flushStock,
  springPreload,
  springShim,
  tapDrill,
  tapDrillName,
  clampTonnage,
];

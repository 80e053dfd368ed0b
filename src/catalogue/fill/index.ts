import type { Definition } from '../../core/define';
import { fillBurn } from './burn';
import { fillDiscDrop } from './discDrop';
import { fillFrozen } from './frozen';
import { fillGate } from './gate';
import { fillReach } from './reach';
import { fillRunner } from './runner';
import { fillSlitDrop } from './slitDrop';
import { fillSlitRate } from './slitRate';
import { fillTubeDrop } from './tubeDrop';
import { fillTubeRate } from './tubeRate';
import { fillVent } from './vent';
import { fillVentFlow } from './ventFlow';
import { fillVentWidth } from './ventWidth';
import { fillViscosity } from './viscosity';

/** Runner, gate, wall and vent: how far the melt flows and how the air gets out. */
export const fill: readonly Definition[] = [
  fillSlitRate,
  fillTubeRate,
  fillSlitDrop,
  fillTubeDrop,
  fillDiscDrop,
  fillBurn,
  fillReach,
  fillFrozen,
  fillViscosity,
  fillRunner,
  fillGate,
  fillVent,
  fillVentFlow,
  fillVentWidth,
];

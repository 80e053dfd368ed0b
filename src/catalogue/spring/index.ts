import type { Definition } from '../../core/define';
import { springBuckle } from './buckle';
import { springDiscForce } from './discForce';
import { springDiscStack } from './discStack';
import { springDiscStress } from './discStress';
import { springForce } from './force';
import { springFreeLimit } from './freeLimit';
import { springHold } from './hold';
import { springLength } from './length';
import { springMargin } from './margin';
import { springOverrun } from './overrun';
import { springParallel } from './parallel';
import { springPreload } from './preload';
import { springRate } from './rate';
import { springSeries } from './series';
import { springShim } from './shim';
import { springSolid } from './solid';
import { springStrength } from './strength';
import { springStress } from './stress';
import { springTravel } from './travel';
import { springWaveRate } from './waveRate';
import { springWaveStress } from './waveStress';

/** Springs that pull an insert home. */
export const spring: readonly Definition[] = [
  springRate,
  springForce,
  springPreload,
  springShim,
  springLength,
  springHold,
  springSolid,
  springTravel,
  springStress,
  springStrength,
  springBuckle,
  springFreeLimit,
  springSeries,
  springParallel,
  springWaveRate,
  springWaveStress,
  springDiscForce,
  springDiscStress,
  springDiscStack,
  springMargin,
  springOverrun,
];

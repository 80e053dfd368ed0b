import type { Definition } from '../../core/define';
import { screwBore } from './bore';
import { screwBreak } from './break';
import { screwClassLoad } from './classLoad';
import { screwClearance } from './clearance';
import { screwHead } from './head';
import { screwMaxTorque } from './maxTorque';
import { screwPreload } from './preload';
import { screwTorque } from './torque';

/** Screws: tightening, strength, heads and holes. */
export const screw: readonly Definition[] = [
  screwTorque,
  screwPreload,
  screwMaxTorque,
  screwClassLoad,
  screwBreak,
  screwHead,
  screwClearance,
  screwBore,
];

import type { Definition } from '../../core/define';
import { ejectForce } from './force';
import { ejectGrip } from './grip';
import { ejectPinCount } from './pinCount';
import { ejectPinPressure } from './pinPressure';
import { ejectPinShear } from './pinShear';
import { ejectStrain } from './strain';
import { ejectTotal } from './total';
import { ejectVacuum } from './vacuum';

/** Getting the part off its core. */
export const eject: readonly Definition[] = [
  ejectGrip,
  ejectStrain,
  ejectForce,
  ejectVacuum,
  ejectTotal,
  ejectPinPressure,
  ejectPinShear,
  ejectPinCount,
];

import type { Definition } from '../../core/define';
import { pressAirBore } from './airBore';
import { pressAirUse } from './airUse';
import { pressDaylight } from './daylight';
import { pressInjection } from './injection';
import { pressMeltVolume } from './meltVolume';
import { pressPlungerSpeed } from './plungerSpeed';
import { pressReturn } from './return';
import { pressScrewClamp } from './screwClamp';
import { pressScrewRelease } from './screwRelease';
import { pressShot } from './shot';
import { pressStroke } from './stroke';
import { pressToggle } from './toggle';

/** The bench press: what it can melt, push, hold and open. */
export const press: readonly Definition[] = [
  pressInjection,
  pressAirBore,
  pressShot,
  pressStroke,
  pressDaylight,
  pressScrewClamp,
  pressScrewRelease,
  pressMeltVolume,
  pressReturn,
  pressAirUse,
  pressToggle,
  pressPlungerSpeed,
];

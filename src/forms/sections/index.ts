import { cost } from './cost';
import { cutters } from './cutters';
import { eject } from './eject';
import { holes } from './holes';
import { plate } from './plate';
import { press } from './press';
import { runner } from './runner';
import { screw } from './screw';
import { seat } from './seat';
import type { Section } from './section';
import { shots } from './shots';
import { spring } from './spring';

/** In the order of the job. */
export const sections: readonly Section[] = [
  press,
  runner,
  seat,
  spring,
  screw,
  eject,
  plate,
  holes,
  cutters,
  cost,
  shots,
];

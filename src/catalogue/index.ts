import type { Definition } from '../core/define';
import { clamp } from './clamp';
import { cool } from './cool';
import { dowel } from './dowel';
import { eject } from './eject';
import { cost } from './cost';
import { cut } from './cut';
import { drill } from './drill';
import { edge } from './edge';
import { fill } from './fill';
import { fit } from './fit';
import { flush } from './flush';
import { heat } from './heat';
import { metal } from './metal';
import { pin } from './pin';
import { plate } from './plate';
import { press } from './press';
import { resin } from './resin';
import { screw } from './screw';
import { seat } from './seat';
import { shoulder } from './shoulder';
import { shrink } from './shrink';
import { spring } from './spring';
import { stack } from './stack';
import { tap } from './tap';
import { thread } from './thread';

/** Every function, by family, in the order in which a toolmaker would look for it. */
export const catalogue: readonly Definition[] = [
  ...seat,
  ...flush,
  ...spring,
  ...eject,
  ...pin,
  ...press,
  ...clamp,
  ...shrink,
  ...resin,
  ...metal,
  ...cool,
  ...fill,
  ...tap,
  ...thread,
  ...screw,
  ...shoulder,
  ...drill,
  ...dowel,
  ...fit,
  ...stack,
  ...heat,
  ...plate,
  ...cut,
  ...edge,
  ...cost,
];

import type { Definition } from '../core/define';
import { clamp } from './clamp';
import { eject } from './eject';
import { cost } from './cost';
import { cut } from './cut';
import { edge } from './edge';
import { fill } from './fill';
import { flush } from './flush';
import { heat } from './heat';
import { pin } from './pin';
import { plate } from './plate';
import { seat } from './seat';
import { spring } from './spring';
import { tap } from './tap';

/** Every function, by family, in the order in which a toolmaker would look for it. */
export const catalogue: readonly Definition[] = [
  ...seat,
  ...flush,
  ...spring,
  ...eject,
  ...pin,
  ...tap,
  ...clamp,
  ...fill,
  ...heat,
  ...plate,
  ...cut,
  ...edge,
  ...cost,
];

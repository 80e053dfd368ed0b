import type { Definition } from '../core/define';
import { clamp } from './clamp';
import { flush } from './flush';
import { seat } from './seat';
import { spring } from './spring';
import { tap } from './tap';

/** Every function, by family, in the order in which a toolmaker would look for it. */
export const catalogue: readonly Definition[] = [...seat, ...flush, ...spring, ...tap, ...clamp];

import type { Definition } from '../../core/define';
import { threadEngage } from './engage';
import { threadLimit } from './limit';
import { threadStrip } from './strip';
import { threadValue } from './value';

/** Screw threads: dimensions, limits, strength. */
export const thread: readonly Definition[] = [threadValue, threadLimit, threadStrip, threadEngage];

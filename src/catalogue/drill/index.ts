import type { Definition } from '../../core/define';
import { drillCsink } from './csink';
import { drillFromSet } from './fromSet';
import { drillNearest } from './nearest';
import { drillPointLength } from './point';
import { drillSize } from './size';

/** Drills and drilled holes. */
export const drill: readonly Definition[] = [
  drillSize,
  drillNearest,
  drillPointLength,
  drillCsink,
  drillFromSet,
];

import { cutters } from './cutters';
import { ejectorPins } from './ejector-pins';
import { holeSchedule } from './hole-schedule';
import { plates } from './plates';
import { pressFitUp } from './press-fit-up';
import { pushOutInsert } from './push-out-insert';
import { shopTables } from './shop-tables';
import type { Design } from './description';

/** Every design sheet. */
export const designs: readonly Design[] = [
  pushOutInsert,
  ejectorPins,
  plates,
  pressFitUp,
  cutters,
  holeSchedule,
  shopTables,
];

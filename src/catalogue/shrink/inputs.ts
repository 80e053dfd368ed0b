import { derived, fromMemory, input } from '../../core/define';
import { resinWith } from '../resins';

export const shrinkage = resinWith(
  'shrinkage',
  'S',
  'shrinkage',
  { min: 0, max: 0.2 },
  'Resin (middle of its range), or the shrinkage as a fraction',
);

const size = { min: '0 mm', usual: ['0.1 mm', '1 m'] } as const;
export const partSize = input('partSize', 'l_p', 'length', { ...size, says: 'Size of the cold part' });
export const cavitySize = input('cavitySize', 'l_c', 'length', {
  ...size,
  says: 'Size of the cavity in the cold mold',
});

export const DEFINITION = derived('Shrinkage after ISO 294-4: (cavity − part)/cavity, both cold');
export const TABLE = fromMemory(
  'Ranges of the resin table, measured at a 3.2 mm wall, each with its own source: SHOW.SOURCE("RESIN.VALUE", resin, "shrinkage")',
);

export const SHRINK_CAUTION =
  'A range, not a number: shrinkage falls with packing pressure and rises with the wall, so a low-pressure press sits at the top of it or above. Leave steel where you can cut later.';

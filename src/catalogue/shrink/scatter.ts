import { formula, named } from '../../core/define';
import { findResin, RESINS, resinValue, type Resin } from '../../tables/resins';
import { notesOfResin, RESIN_NAME } from '../resins';
import { cavitySize, DEFINITION, SHRINK_CAUTION, TABLE } from './inputs';
import { namesOf } from '../../tables/names';

interface Range extends Partial<Pick<Resin, 'notes'>> {
  readonly low: number;
  readonly high: number;
}

export const shrinkScatter = formula({
  name: 'SHRINK.SCATTER',
  summary: 'Range of part size that a resin’s range of shrinkage makes.',
  inputs: [
    cavitySize,
    named<'resin', Range>(
      'resin',
      'resin',
      {
        ...RESIN_NAME,
        names: () => namesOf(RESINS),
        notes: notesOfResin,
        read: (text) => {
          const resin = findResin(text);
          return {
            low: resinValue(resin, 'shrinkage low').value,
            high: resinValue(resin, 'shrinkage high').value,
            notes: resin.notes,
          };
        },
        number: {
          kind: 'ratio',
          says: 'the width of its shrinkage range as a fraction',
          min: 0,
          max: 0.2,
          means: (width) => ({ low: 0, high: width }),
        },
        binds: {
          S_l: { gives: 'ratio', says: 'Least shrinkage of the resin', from: ({ low }) => low },
          S_h: { gives: 'ratio', says: 'Largest shrinkage of the resin', from: ({ high }) => high },
        },
      },
      { says: 'Resin' },
    ),
  ],
  steps: { r: { gives: 'length', expr: 'l_c*(S_h - S_l)', says: 'Largest part less smallest' } },
  result: 'r',
  sources: [DEFINITION, TABLE],
  cautions: [{ says: SHRINK_CAUTION }],
  related: ['SHRINK.CAVITY', 'STACK.RSS'],
});

import { named, procedure } from '../../core/define';
import { naming } from '../../core/refusal';
import { readGrade } from '../../tables/fitName';
import { ISO_286, ISO_286_RECALLED, standardTolerance } from '../../tables/iso286';
import { fromMicrometres, inMillimetres, nativeBySize, size } from './inputs';

export const fitGrade = procedure({
  name: 'FIT.GRADE',
  summary: 'Standard tolerance of a grade at a size.',
  inputs: [
    size,
    named<'grade', string>(
      'grade',
      'grade',
      { what: 'a grade such as "IT7"', read: readGrade },
      { says: 'Standard tolerance grade, IT01 to IT18' },
    ),
  ],
  gives: 'length',
  method: 'Table of standard tolerances by grade and size step.',
  run: (x) => fromMicrometres(naming('grade', () => standardTolerance(inMillimetres(x.size), x.grade))),
  native: ({ size: D, grade }, write) => {
    const found = grade.fixed();
    const valueAt = (at: number): number => fromMicrometres(standardTolerance(inMillimetres(at), found));
    return nativeBySize(`Standard tolerance IT${found}`, D.text, valueAt, write);
  },
  sources: [ISO_286, ISO_286_RECALLED],
  related: ['FIT.UPPER', 'FIT.GAP'],
});

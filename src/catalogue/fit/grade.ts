import { named, procedure } from '../../core/define';
import { naming } from '../../core/refusal';
import { readGrade } from '../../tables/fitName';
import { GRADES, ISO_286, ISO_286_RECALLED, standardTolerance } from '../../tables/iso286';
import { fromMicrometres, inMillimetres, nativeTolerance, size } from './inputs';

export const fitGrade = procedure({
  name: 'FIT.GRADE',
  summary: 'Standard tolerance of a grade at a size.',
  inputs: [
    size,
    named<'grade', string>(
      'grade',
      'grade',
      { what: 'a grade such as "IT7"', read: readGrade, names: () => GRADES.map((one) => `IT${one}`) },
      { says: 'Standard tolerance grade, IT01 to IT18' },
    ),
  ],
  gives: 'length',
  method: 'Table of standard tolerances by grade and size step.',
  run: (x) => fromMicrometres(naming('grade', () => standardTolerance(inMillimetres(x.size), x.grade))),
  native: ({ size: D, grade }, write) =>
    nativeTolerance(
      D.text,
      grade,
      (of) => (at) => fromMicrometres(standardTolerance(inMillimetres(at), of)),
      write,
    ),
  sources: [ISO_286, ISO_286_RECALLED],
  related: ['FIT.UPPER', 'FIT.GAP'],
});

import { checks } from '../../core/checks';
import { fitGrade } from './grade';

export default checks(fitGrade, [
  {
    given: { size: '45 mm', grade: 'IT11' },
    expect: '160 µm',
    within: 1e-9,
    from: 'ISO 286-1, Table 1: IT11 of 30 to 50 mm (Machine Drawing, Table 15.1)',
    kind: 'published',
  },
  {
    given: { size: '30 mm', grade: 'IT7' },
    expect: '21 µm',
    within: 1e-9,
    from: 'ISO 286-1, Table 1: 30 mm belongs to the step 18 to 30',
    kind: 'published',
  },
  {
    given: { size: '30.001 mm', grade: 'IT7' },
    expect: '25 µm',
    within: 1e-9,
    from: 'ISO 286-1, Table 1: just above 30 mm the next step begins',
    kind: 'published',
    limit: true,
  },
]);

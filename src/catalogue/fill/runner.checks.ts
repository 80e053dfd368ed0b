import { checks } from '../../core/checks';
import { fillRunner } from './runner';

export default checks(fillRunner, [
  {
    given: { partMass: '12 g', length: '60 mm' },
    expect: '2.60571379117 mm',
    within: 1e-10,
    from: 'by hand: 3.46410162 × 2.78315768/3.7',
  },
  {
    given: { partMass: '13.69 g', length: '16 mm' },
    expect: '2 mm',
    within: 1e-12,
    from: 'where the root of the mass is 3.7 the diameter is the fourth root of the length',
    limit: true,
  },
]);

import { checks } from '../../core/checks';
import { shoulderTravel } from './travel';

export default checks(shoulderTravel, [
  {
    given: { shoulderLength: '25 mm', landThickness: '18 mm' },
    expect: '7 mm',
    within: 1e-9,
    from: 'by hand: 25 − 18',
  },
  {
    given: { shoulderLength: '1 in', landThickness: '0.8 in', shims: '0.03 in' },
    expect: '0.17 in',
    within: 1e-9,
    from: 'by hand: 1 − 0.8 − 0.03',
  },
  {
    given: { shoulderLength: '20 mm', landThickness: '20 mm' },
    expect: '0 mm',
    from: 'a land as thick as the shoulder does not move',
    limit: true,
  },
]);

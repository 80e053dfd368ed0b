import { checks } from '../../core/checks';
import { seatHeight } from './height';

export default checks(seatHeight, [
  {
    given: { widthError: '0.01 mm', draft: '5 deg' },
    expect: '0.05715026 mm',
    within: 1e-7,
    from: 'by hand: 0.01/(2 × 0.08748866)',
  },
  {
    given: { widthError: '0.02 mm', draft: '26.56505117707799 deg' },
    expect: '0.02 mm',
    within: 1e-12,
    from: 'at tan α = 1/2 the height moves as much as the width',
  },
  {
    given: { widthError: '0 mm', draft: '3 deg' },
    expect: '0 mm',
    from: 'no error, no change',
    limit: true,
  },
]);

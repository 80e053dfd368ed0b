import { checks } from '../../core/checks';
import { tapTravel } from './travel';

export default checks(tapTravel, [
  {
    given: { plate: '16 mm', thread: 'M6' },
    expect: '21 mm',
    within: 1e-12,
    from: 'by hand: 16 + 4 × 1 + 1',
  },
  {
    given: { plate: '0.5 in', thread: '1/4-20', chamferPitches: 4, clear: '0.05 in' },
    expect: '0.75 in',
    within: 1e-12,
    from: 'by hand: 0.5 + 4 × 0.05 + 0.05',
  },
  {
    given: { plate: '10 mm', thread: 'M8', chamferPitches: 0, clear: '0 mm' },
    expect: '10 mm',
    within: 1e-12,
    from: 'a tap without chamfer travels the plate alone',
    limit: true,
  },
]);

import { checks } from '../../core/checks';
import { cutChip } from './chip';

export default checks(cutChip, [
  {
    given: { chipLoad: '0.04 mm', radialDepth: '0.5 mm', diameter: '8 mm' },
    expect: '0.019364916731 mm',
    within: 1e-10,
    from: 'by hand: 2 × 0.04 × √(0.0625 × 0.9375)',
  },
  {
    given: { chipLoad: '0.05 mm', radialDepth: '0.6 mm', diameter: '6 mm' },
    expect: '0.03 mm',
    within: 1e-12,
    from: 'by hand: 2 × 0.05 × √(0.1 × 0.9)',
  },
  {
    given: { chipLoad: '0.002 in', radialDepth: '0.3 in', diameter: '0.5 in' },
    expect: '0.002 in',
    within: 1e-12,
    from: 'more than half engaged, the chip is the feed per tooth',
    limit: true,
  },
]);

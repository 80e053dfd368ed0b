import { checks } from '../../core/checks';
import { cutChipFeed } from './chipFeed';

export default checks(cutChipFeed, [
  {
    given: { chipThickness: '0.02 mm', radialDepth: '0.5 mm', diameter: '8 mm' },
    expect: '0.0413118223595 mm',
    within: 1e-10,
    from: 'by hand: 0.02/(2 √(0.0625 × 0.9375))',
  },
  {
    given: { chipThickness: '0.03 mm', radialDepth: '0.6 mm', diameter: '6 mm' },
    expect: '0.05 mm',
    within: 1e-12,
    from: 'inverse of CUT.CHIP with a feed of 0.05 mm',
    limit: true,
  },
  {
    given: { chipThickness: '0.002 in', radialDepth: '0.3 in', diameter: '0.5 in' },
    expect: '0.002 in',
    within: 1e-12,
    from: 'more than half engaged, the chip is the feed per tooth',
    limit: true,
  },
]);

import { checks } from '../../core/checks';
import { cutMeanChip } from './meanChip';

export default checks(cutMeanChip, [
  {
    given: { chipLoad: '0.02 mm', radialDepth: '1.5 mm', diameter: '6 mm' },
    expect: '0.009549296586 mm',
    within: 1e-9,
    from: 'by hand: a quarter of the cutter is an arc of 60°: 0.02 × 0.5/(π/3)',
  },
  {
    given: { chipLoad: '0.05 mm', radialDepth: '10 mm', diameter: '10 mm' },
    expect: '0.03183098861838 mm',
    within: 1e-12,
    from: 'a full slot: the mean of a half sine, 2/π of the feed',
    limit: true,
  },
  {
    given: { chipLoad: '0.003 in', radialDepth: '0.25 in', diameter: '0.5 in' },
    expect: '0.0019098593171 in',
    within: 1e-10,
    from: 'half the cutter: 2/π of the feed as well',
    limit: true,
  },
]);

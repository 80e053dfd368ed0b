import { checks } from '../../core/checks';
import { edgeMiddle } from './middle';

export default checks(edgeMiddle, [
  {
    given: { reading1: '-12.35 mm', reading2: '37.65 mm' },
    expect: '12.65 mm',
    within: 1e-12,
    from: 'by hand: (37.65 − 12.35)/2',
  },
  {
    given: { reading1: '0.4375 in', reading2: '1.3125 in' },
    expect: '0.875 in',
    within: 1e-12,
    from: 'by hand: 7/16 and 21/16 have 14/16 between them',
  },
  {
    given: { reading1: '-0.75 in', reading2: '0.75 in' },
    expect: '0 in',
    from: 'touches that lie even about zero have their middle there',
    limit: true,
  },
]);

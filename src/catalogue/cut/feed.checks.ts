import { checks } from '../../core/checks';
import { cutFeed } from './feed';

export default checks(cutFeed, [
  {
    given: { rpm: '6000 rpm', flutes: 2, chip: '0.03 mm' },
    expect: '360 mm/min',
    within: 1e-12,
    from: 'by hand: 6000 × 2 × 0.03',
  },
  {
    given: { rpm: '4500 rpm', flutes: 4, chip: '0.001 in' },
    expect: '18 in/min',
    within: 1e-12,
    from: 'by hand: 4500 × 4 × 0.001',
  },
  {
    given: { rpm: '1 rpm', flutes: 1, chip: '0.1 mm' },
    expect: '0.1 mm/min',
    within: 1e-12,
    from: 'one edge, one turn a minute: the chip itself',
    limit: true,
  },
]);

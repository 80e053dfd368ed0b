import { checks } from '../../core/checks';
import { shrinkScatter } from './scatter';

export default checks(shrinkScatter, [
  {
    given: { cavitySize: '40 mm', resin: 'ABS' },
    expect: '0.16 mm',
    within: 1e-9,
    from: 'by hand: 40 × (0.9 − 0.5) % (general molding guide)',
    kind: 'secondhand',
  },
  {
    given: { cavitySize: '2 in', resin: 'POM' },
    expect: '0.014 in',
    within: 1e-9,
    from: 'by hand: 2 × (2.5 − 1.8) % (general molding guide)',
    kind: 'secondhand',
  },
  {
    given: { cavitySize: '40 mm', resin: 0 },
    expect: '0 mm',
    from: 'a shrinkage without a range does not scatter',
    limit: true,
  },
]);

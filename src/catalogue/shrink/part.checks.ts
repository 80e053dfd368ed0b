import { checks } from '../../core/checks';
import { shrinkPart } from './part';

export default checks(shrinkPart, [
  {
    given: { cavitySize: '80.5 mm', shrinkage: 0.006 },
    expect: '80.017 mm',
    within: 1e-12,
    from: 'by hand: 80.5 × 0.994',
  },
  {
    given: { cavitySize: '2.55 in', shrinkage: 0.02 },
    expect: '2.499 in',
    within: 1e-12,
    from: 'by hand: 2.55 × 0.98',
  },
  {
    given: { cavitySize: '80 mm', shrinkage: 0 },
    expect: '80 mm',
    within: 1e-12,
    from: 'without shrinkage the cavity’s own size',
    limit: true,
  },
]);

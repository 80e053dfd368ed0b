import { checks } from '../../core/checks';
import { springFreeLimit } from './freeLimit';

export default checks(springFreeLimit, [
  {
    given: { meanDia: '28.5 mm' },
    expect: '149.91 mm',
    within: 0.02,
    from: 'Shigley’s rule for steel: 2.63 × 28.5/0.5',
    kind: 'secondhand',
  },
  {
    given: { meanDia: '14 mm' },
    expect: '72.259407 mm',
    within: 1e-7,
    from: 'by hand: 28π × √(0.604369/0.895631), γ = 0.395631',
  },
  {
    given: { meanDia: '0.5 in', seating: 1, material: '302 stainless' },
    expect: '1.3596644 in',
    within: 1e-7,
    from: 'by hand: 0.5π × √(0.6424870/0.8575130), γ = 69/193',
  },
  {
    given: { meanDia: '10 mm', seating: 2 },
    expect: '12.903466 mm',
    within: 1e-7,
    from: 'one end free: a quarter of the 51.613862 mm of two flat seats',
    limit: true,
  },
]);

import { checks } from '../../core/checks';
import { screwClassLoad } from './classLoad';

export default checks(screwClassLoad, [
  {
    given: { thread: 'M6', strengthClass: '8.8', fraction: 1 },
    expect: '11600 N',
    within: 0.007,
    from: 'ISO 898-1 proof load of M6 8.8 (slsbearings.com/slsbnn/tensile-strength.html): 11600 N',
    kind: 'secondhand',
  },
  {
    given: { thread: '3/8-16', strengthClass: 'grade 8' },
    expect: '6974 lbf',
    within: 1e-3,
    from: 'clamp load at 75 % of proof, SAE J429 grade 8 (engineersedge.com): 6974 lbf',
    kind: 'secondhand',
  },
  {
    given: { thread: 'M8', strengthClass: '12.9' },
    expect: '26632.7 N',
    within: 2e-5,
    from: 'by hand: 0.75 × 970 × 36.609 mm² (stress area of the table of Bickford; engineersedge.com)',
    kind: 'secondhand',
  },
  {
    given: { thread: '1/4-20', strengthClass: 'A574' },
    expect: '3341.23195 lbf',
    within: 1e-8,
    from: 'by hand: 0.75 × 140000 × 0.0318212567',
  },
  {
    given: { thread: '1/4-20', strengthClass: 'grade 5', fraction: 1e-9 },
    expect: '0 lbf',
    within: 1e-4,
    from: 'a fraction of nothing is no load',
    limit: true,
  },
]);

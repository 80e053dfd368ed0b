import { checks } from '../../core/checks';
import { screwBreak } from './break';

export default checks(screwBreak, [
  {
    given: { thread: 'M8', strengthClass: '8.8' },
    expect: '29200 N',
    within: 0.007,
    from: 'ISO 898-1 tensile load of M8 8.8 (slsbearings.com, usefastener.com): 29200 N',
    kind: 'secondhand',
  },
  {
    given: { thread: 'M20', strengthClass: '10.9' },
    expect: '255 kN',
    within: 0.007,
    from: 'ISO 898-1 tensile load of M20 10.9 (slsbearings.com, usefastener.com): 255 kN',
    kind: 'secondhand',
  },
  {
    given: { thread: '1/4-20', strengthClass: 'A574' },
    expect: '5727.8262 lbf',
    within: 1e-7,
    from: 'ASTM A574 (stsindustrial.com), by hand: 180000 × 0.0318212567',
    kind: 'secondhand',
  },
  {
    given: { thread: 'M6', strengthClass: '12.9' },
    expect: '24550 N',
    within: 1e-4,
    from: 'as the proof load of the class, taken 1220/970 times: 1220 × 20.123 mm² (Bickford; engineersedge.com)',
    kind: 'secondhand',
    limit: true,
  },
]);

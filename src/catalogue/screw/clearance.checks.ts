import { checks } from '../../core/checks';
import { screwClearance } from './clearance';

export default checks(screwClearance, [
  {
    given: { thread: 'M5' },
    expect: '5.5 mm',
    within: 1e-12,
    from: 'ISO 273 medium (gumyr/cq_warehouse clearance_hole_sizes.csv)',
    kind: 'secondhand',
  },
  {
    given: { thread: 'M4', fit: 'close' },
    expect: '4.3 mm',
    within: 1e-12,
    from: 'ISO 273 fine (the same list)',
    kind: 'secondhand',
  },
  {
    given: { thread: '1/4-20' },
    expect: '9/32 in',
    within: 1e-12,
    from: 'ASME B18.3 (from memory)',
    kind: 'memory',
  },
  {
    given: { thread: '1/4-20', fit: 'loose' },
    expect: '19/64 in',
    within: 1e-12,
    from: 'Machinery’s Handbook, 31st edition, p. 1741, Table 1a: smallest loose hole 0.297 in',
    kind: 'published',
  },
]);

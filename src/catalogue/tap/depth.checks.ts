import { checks } from '../../core/checks';
import { tapDepth } from './depth';

export default checks(tapDepth, [
  {
    given: { fullThread: '12 mm', thread: 'M6', chamferPitches: 4, pointAngle: '118 deg', drill: '5 mm' },
    expect: '17.5021515476 mm',
    within: 1e-10,
    from: 'by hand: 12 + 4 × 1 + 2.5/tan 59°, 2.5/1.66427948',
  },
  {
    given: { fullThread: '0.5 in', thread: '1/4-20', chamferPitches: 2, drill: '#7' },
    expect: '0.660386492212 in',
    within: 1e-10,
    from: 'by hand: 0.5 + 2 × 0.05 + 0.1005/tan 59°',
  },
  {
    given: { fullThread: '12 mm', thread: 'M6' },
    expect: '17.5021515476 mm',
    within: 1e-10,
    from: 'the same by hand, with the 5 mm drill that ISO 2306 has for M6',
    kind: 'memory',
  },
  {
    given: { fullThread: '12 mm', thread: 'M6', chamferPitches: 0, pointAngle: '180 deg' },
    expect: '12 mm',
    within: 1e-12,
    from: 'without chamfer and point the hole is as deep as its thread',
    limit: true,
  },
]);

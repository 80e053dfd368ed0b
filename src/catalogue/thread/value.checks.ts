import { checks } from '../../core/checks';
import { threadValue } from './value';

export default checks(threadValue, [
  {
    given: { thread: '10-32', property: 'major' },
    expect: '0.19 in',
    within: 1e-12,
    from: 'ASME B1.1: 0.060 + 10 × 0.013',
    kind: 'memory',
  },
  {
    given: { thread: 'M12', property: 'pitchdia' },
    expect: '10.863 mm',
    within: 5e-5,
    from: 'ISO 724: 10.863',
    kind: 'memory',
  },
  {
    given: { thread: 'M8', property: 'minor' },
    expect: '6.647 mm',
    within: 5e-5,
    from: 'ISO 724: 6.647',
    kind: 'memory',
  },
  {
    given: { thread: 'M8', property: 'stressarea' },
    expect: '36.609 mm²',
    within: 2e-5,
    from: 'table of thread areas (Bickford; engineersedge.com): 36.609',
    kind: 'secondhand',
  },
  {
    given: { thread: '1/4-20', property: 'stressarea' },
    expect: '0.0318212567 in²',
    within: 1e-8,
    from: 'FED-STD-H28/2B formula 1b, by hand: π/4 × (0.25 - 0.9742785793/20)²; its table has 0.0318',
    kind: 'secondhand',
  },
  {
    given: { thread: '10-32', property: 'tpi' },
    expect: '32 1/in',
    within: 1e-12,
    from: 'the designation says so',
  },
]);

import { checks } from '../../core/checks';
import { fillSlitRate } from './slitRate';

export default checks(fillSlitRate, [
  {
    given: { flow: '12 cm³/s', width: '25 mm', gap: '2 mm', powerIndex: 0.4 },
    expect: '1080 1/s',
    within: 1e-12,
    from: 'by hand: 6 × 12000/(25 × 4) × 1.8/1.2 = 720 × 1.5',
  },
  {
    given: { flow: '0.6 in³/s', width: '1 in', gap: '0.06 in' },
    expect: '1000 1/s',
    within: 1e-12,
    from: 'by hand: 6 × 0.6/(1 × 0.0036)',
  },
  {
    given: { flow: '12 cm³/s', width: '25 mm', gap: '2 mm', powerIndex: 1 },
    expect: '720 1/s',
    within: 1e-12,
    from: 'a Newtonian melt has the apparent rate 6Q/(Wh²)',
    limit: true,
  },
]);

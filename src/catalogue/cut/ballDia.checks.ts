import { checks } from '../../core/checks';
import { cutBallDia } from './ballDia';

export default checks(cutBallDia, [
  {
    given: { ballDia: '8 mm', axialDepth: '0.3 mm' },
    expect: '3.03973683071 mm',
    within: 1e-11,
    from: 'by hand: 2 √(0.3 × 7.7)',
  },
  {
    given: { ballDia: '10 mm', axialDepth: '1 mm' },
    expect: '6 mm',
    within: 1e-12,
    from: 'by hand: 3-4-5 triangle, √(5² − 4²) = 3',
  },
  {
    given: { ballDia: '8 mm', axialDepth: '4 mm' },
    expect: '8 mm',
    within: 1e-12,
    from: 'at a depth of its radius the ball cuts with its full diameter',
    limit: true,
  },
]);

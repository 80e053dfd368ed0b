import { checks } from '../../core/checks';
import { cutReach } from './reach';

export default checks(cutReach, [
  {
    given: { neckDia: '8 mm', cutterDia: '6 mm', draft: '1 deg' },
    expect: '57.2899616308 mm',
    within: 1e-11,
    from: 'by hand: 2/(2 × 0.0174550649)',
  },
  {
    given: { neckDia: '0.25 in', cutterDia: '0.1875 in', draft: '2 deg' },
    expect: '0.894882915091 in',
    within: 1e-11,
    from: 'by hand: 0.0625/(2 × 0.0349207695)',
  },
  {
    given: { neckDia: '5.5 mm', cutterDia: '6 mm', draft: '0 deg' },
    expect: 'clears',
    from: 'a neck thinner than the cutter clears even a straight wall',
    limit: true,
  },
  {
    given: { neckDia: '8 mm', cutterDia: '6 mm', draft: '45 deg' },
    expect: '1 mm',
    within: 1e-12,
    from: 'at 45° the height is half of what the neck is wider',
    limit: true,
  },
]);

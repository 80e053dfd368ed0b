import { checks } from '../../core/checks';
import { springTravel } from './travel';

export default checks(springTravel, [
  {
    given: { pocketLength: '32 mm', solidLength: '20 mm' },
    expect: '10.8 mm',
    within: 1e-12,
    from: 'by hand: (32 − 20) × 0.9',
  },
  {
    given: { pocketLength: '1.25 in', solidLength: '0.8 in', reserve: 0.15 },
    expect: '0.3825 in',
    within: 1e-12,
    from: 'by hand: 0.45 × 0.85',
  },
  {
    given: { pocketLength: '20 mm', solidLength: '20 mm' },
    expect: '0 mm',
    from: 'solid in its pocket, it leaves no stroke',
    limit: true,
  },
]);

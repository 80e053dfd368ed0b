import { checks } from '../../core/checks';
import { ejectVacuum } from './vacuum';

export default checks(ejectVacuum, [
  {
    given: { coreArea: '900 mm²' },
    expect: '91.1925 N',
    within: 1e-12,
    from: 'by hand: 900 × 0.101325',
  },
  {
    given: { coreArea: '1.5 in²', vacuum: '10 psi' },
    expect: '15 lbf',
    within: 1e-12,
    from: 'by hand: 1.5 × 10',
  },
  {
    given: { coreArea: '1 in²' },
    expect: '14.69595 lbf',
    within: 1e-6,
    from: 'standard atmosphere in handbook tables: 14.69595 psi',
    kind: 'memory',
  },
  {
    given: { coreArea: '900 mm²', vacuum: '0 psi' },
    expect: '0 N',
    from: 'a vented core holds nothing',
    limit: true,
  },
]);

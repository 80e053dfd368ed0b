import { checks } from '../../core/checks';
import { springDiscStack } from './discStack';

export default checks(springDiscStack, [
  {
    given: { discForce: '1050 N', discDeflection: '0.2 mm', parallel: 2, series: 6, what: 'force' },
    expect: '2100 N',
    within: 1e-12,
    from: 'by hand: 2 × 1050',
  },
  {
    given: { discForce: '200 lbf', discDeflection: '0.01 in', parallel: 3, series: 4, what: 'deflection' },
    expect: '0.04 in',
    within: 1e-12,
    from: 'by hand: 4 × 0.01',
  },
  {
    given: { discForce: '1050 N', discDeflection: '0.2 mm', parallel: 1, series: 1, what: 'deflection' },
    expect: '0.2 mm',
    within: 1e-12,
    from: 'a stack of one disc is the disc',
    limit: true,
  },
]);

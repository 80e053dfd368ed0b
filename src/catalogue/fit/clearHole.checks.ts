import { checks } from '../../core/checks';
import { fitClearHole } from './clearHole';

export default checks(fitClearHole, [
  {
    given: { fastener: '6 mm', positionTol: '0.25 mm' },
    expect: '6.25 mm',
    within: 1e-12,
    from: 'by hand: F + T',
  },
  {
    given: { fastener: '0.25 in', positionTol: '0.01 in', case: 'fixed' },
    expect: '0.27 in',
    within: 1e-12,
    from: 'by hand: F + 2 T',
  },
  {
    given: { fastener: '8 mm', positionTol: '0 mm', case: 'fixed' },
    expect: '8 mm',
    within: 1e-12,
    from: 'holes in their true places need no clearance',
    limit: true,
  },
]);

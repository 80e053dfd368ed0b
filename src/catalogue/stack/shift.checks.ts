import { checks } from '../../core/checks';
import { stackShift } from './shift';

export default checks(stackShift, [
  {
    given: { tolerances: ['0.03 mm', '0.04 mm'], shifts: [0.5], sensitivities: [-1, 1] },
    expect: '0.06 mm',
    within: 1e-12,
    from: 'by hand: half of 0.07 and half of the 3-4-5 root',
  },
  {
    given: { tolerances: ['0.02 mm', '0.05 mm', '0.01 mm'], shifts: [0.8, 0.2, 0] },
    expect: '0.0674246304 mm',
    within: 1e-8,
    from: 'by hand: 0.026 + √(0.004² + 0.04² + 0.01²)',
  },
  {
    given: { tolerances: ['0.02 mm', '0.05 mm', '0.01 mm'], shifts: [1] },
    expect: '0.08 mm',
    within: 1e-12,
    from: 'all shift is the worst case',
    limit: true,
  },
  {
    given: { tolerances: ['0.02 mm', '0.05 mm', '0.01 mm'], shifts: [0] },
    expect: '0.0547722558 mm',
    within: 1e-8,
    from: 'no shift is the root-sum-square √0.003',
    limit: true,
  },
]);

import { checks } from '../../core/checks';
import { stackYield } from './yield';

export default checks(stackYield, [
  {
    given: { mean: '0 mm', sigma: '0.01 mm', lower: '-0.025 mm', upper: '0.025 mm' },
    expect: 0.98758067,
    within: 1e-8,
    from: 'table of the normal curve: Φ(2.5) = 0.99379033, so 2 × 0.99379033 − 1',
  },
  {
    given: { mean: '0.005 mm', sigma: '0.01 mm', lower: '-0.025 mm', upper: '0.025 mm' },
    expect: 0.97589997,
    within: 1e-8,
    from: 'table of the normal curve: Φ(2) − Φ(−3) = 0.97724987 − 0.00134990',
  },
  {
    given: { mean: '1 in', sigma: '0.001 in', lower: '0.997 in', upper: '1.003 in' },
    expect: 0.9973002,
    within: 1e-7,
    from: 'three sigma each way: 0.9973002 of the normal curve',
  },
  {
    given: { mean: '0 mm', sigma: '0.01 mm', lower: '-1 mm', upper: '0 mm' },
    expect: 0.5,
    within: 1e-12,
    from: 'half lies below the mean',
    limit: true,
  },
]);

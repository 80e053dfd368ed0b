import { checks } from '../../core/checks';
import { stackCpk } from './cpk';

export default checks(stackCpk, [
  {
    given: { mean: '0.005 mm', sigma: '0.01 mm', lower: '-0.025 mm', upper: '0.025 mm' },
    expect: 0.666666667,
    within: 1e-8,
    from: 'by hand: the upper limit is 2 sigma away, 2/3',
  },
  {
    given: { mean: '1 in', sigma: '0.00025 in', lower: '0.999 in', upper: '1.001 in' },
    expect: 1.33333333,
    within: 1e-8,
    from: 'by hand: four sigma each way, 4/3',
  },
  {
    given: { mean: '0.03 mm', sigma: '0.01 mm', lower: '-0.025 mm', upper: '0.025 mm' },
    expect: -0.166666667,
    within: 1e-8,
    from: 'by hand: the mean is half a sigma beyond the limit',
  },
  {
    given: { mean: '0.025 mm', sigma: '0.01 mm', lower: '-0.025 mm', upper: '0.025 mm' },
    expect: 0,
    from: 'a mean at its limit has no room',
    limit: true,
  },
]);

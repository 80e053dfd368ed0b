import { checks } from '../../core/checks';
import { stackWorst } from './worst';

export default checks(stackWorst, [
  {
    given: { tolerances: ['0.02 mm', '0.015 mm', '0.01 mm', '0.03 mm'] },
    expect: '0.075 mm',
    within: 1e-12,
    from: 'by hand: 0.02 + 0.015 + 0.01 + 0.03',
  },
  {
    given: { tolerances: ['0.001 in', '0.002 in', '0.0005 in'], sensitivities: [1, -1, 0.5] },
    expect: '0.00325 in',
    within: 1e-12,
    from: 'by hand: 0.001 + 0.002 + 0.00025; the sign does not matter',
  },
  {
    given: { tolerances: ['0.02 mm'] },
    expect: '0.02 mm',
    from: 'one contributor is its own stack',
    limit: true,
  },
]);

import { checks } from '../../core/checks';
import { stackBender } from './bender';

export default checks(stackBender, [
  {
    given: { tolerances: ['0.02 mm', '0.03 mm', '0.05 mm'] },
    expect: '0.0924662100 mm',
    within: 1e-8,
    from: 'by hand: 1.5 × √0.0038',
  },
  {
    given: { tolerances: ['0.001 in', '0.002 in', '0.0005 in'], sensitivities: [1, -1, 0.5] },
    expect: '0.003375 in',
    within: 1e-9,
    from: 'by hand: 1.5 × 2.25 thousandths',
  },
  {
    given: { tolerances: ['0 mm', '0 mm'] },
    expect: '0 mm',
    from: 'without tolerances nothing stacks up',
    limit: true,
  },
]);

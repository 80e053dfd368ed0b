import { checks } from '../../core/checks';
import { stackRss } from './rss';

export default checks(stackRss, [
  {
    given: { tolerances: ['0.02 mm', '0.015 mm', '0.01 mm', '0.03 mm'] },
    expect: '0.0403112887 mm',
    within: 1e-8,
    from: 'by hand: √(0.0004 + 0.000225 + 0.0001 + 0.0009) = √0.001625',
  },
  {
    given: { tolerances: ['0.001 in', '0.002 in', '0.0005 in'], sensitivities: [1, -1, 0.5] },
    expect: '0.00225 in',
    within: 1e-9,
    from: 'by hand: √(1 + 4 + 0.0625) = √5.0625 = 2.25 thousandths',
  },
  {
    given: { tolerances: ['0.02 mm', '0 mm'] },
    expect: '0.02 mm',
    within: 1e-12,
    from: 'one contributor is its own stack',
    limit: true,
  },
  {
    given: { tolerances: ['0.01 mm', '0.01 mm', '0.01 mm', '0.01 mm'] },
    expect: '0.02 mm',
    within: 1e-12,
    from: 'four alike make twice one: √4',
    limit: true,
  },
]);

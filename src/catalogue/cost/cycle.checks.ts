import { checks } from '../../core/checks';
import { costCycle } from './cycle';

export default checks(costCycle, [
  {
    given: { fill: '2 s', hold: '4 s', cool: '18 s', handling: '12 s', moldWait: '40 s' },
    expect: '58 s',
    within: 1e-12,
    from: 'by hand: 2 + 4 + 12 + 40',
  },
  {
    given: { fill: '3 s', hold: '5 s', cool: '20 s', handling: '15 s' },
    expect: '43 s',
    within: 1e-12,
    from: 'by hand: 3 + 5 + 15 + 20',
  },
  {
    given: { fill: '3 s', hold: '5 s', cool: '20 s', handling: '15 s', moldWait: '20 s' },
    expect: '43 s',
    within: 1e-12,
    from: 'a wait as long as the cooling costs nothing',
    limit: true,
  },
]);

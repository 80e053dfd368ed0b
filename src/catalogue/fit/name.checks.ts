import { checks } from '../../core/checks';
import { fitName } from './name';

export default checks(fitName, [
  {
    given: { size: '8 mm', minGap: '0.005 mm', maxGap: '0.029 mm' },
    expect: 'H7/g6',
    from: 'ISO 286-2: 8 H7/g6 has 5 to 29 µm',
    kind: 'memory',
  },
  {
    given: { size: '0.5 in', minGap: '-0.0012 in', maxGap: '0.0001 in' },
    expect: 'H7/p6',
    from: 'ISO 286-2: 12.7 H7 +18/0, p6 +29/+18: −29 to 0 µm, within −30.5 to 2.5',
    kind: 'published',
  },
  {
    given: { size: '20 mm', minGap: '-1 mm', maxGap: '1 mm' },
    expect: 'H7/u6',
    from: 'with room for all the tightest of the list',
    limit: true,
  },
]);

import { checks } from '../../core/checks';
import { fitGap } from './gap';

export default checks(fitGap, [
  {
    given: { size: '8 mm', fit: 'H7/g6', which: 'max' },
    expect: '29 µm',
    within: 1e-9,
    from: 'ISO 286-2: 8H7 +15/0, 8g6 −5/−14',
    kind: 'memory',
  },
  {
    given: { size: '8 mm', fit: 'H7/m6', which: 'min' },
    expect: '-15 µm',
    within: 1e-9,
    from: 'ISO 286-2: 8H7 +15/0, 8m6 +15/+6',
    kind: 'published',
  },
  {
    given: { size: '20 mm', fit: 'H7/h6' },
    expect: '0 µm',
    from: 'largest shaft and smallest hole are both nominal',
    limit: true,
  },
]);

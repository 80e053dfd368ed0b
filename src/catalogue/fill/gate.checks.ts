import { checks } from '../../core/checks';
import { fillGate } from './gate';

export default checks(fillGate, [
  { given: { wall: '2 mm' }, expect: '1.2 mm', within: 1e-12, from: 'by hand: 0.6 × 2' },
  {
    given: { wall: '0.09 in', fraction: 0.7 },
    expect: '0.063 in',
    within: 1e-12,
    from: 'by hand: 0.7 × 0.09',
  },
  {
    given: { wall: '2 mm', fraction: 1 },
    expect: '2 mm',
    within: 1e-12,
    from: 'a full gate is as deep as the wall',
    limit: true,
  },
]);

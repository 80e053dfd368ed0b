import { checks } from '../../core/checks';
import { heatMismatch } from './mismatch';

export default checks(heatMismatch, [
  {
    given: { length: '120 mm', metalA: '6061-T6', riseA: '35 °C', metalB: 'P20', riseB: '35 °C' },
    expect: '0.04536 mm',
    within: 1e-9,
    from: 'by hand: 120 × (23.6e-6 − 12.8e-6) × 35',
  },
  {
    given: { length: '3 in', metalA: '7075-T6', riseA: '70 °F', metalB: 'H13', riseB: '50 °F' },
    expect: '0.00181333333 in',
    within: 1e-8,
    from: 'by hand: 3 × (23.4e-6/1.8 × 70 − 11e-6/1.8 × 50)',
  },
  {
    given: { length: '3 in', metalA: 'P20', riseA: '50 °F', metalB: 'P20', riseB: '50 °F' },
    expect: '0 in',
    from: 'the same metal at the same rise grows alike',
    limit: true,
  },
]);

import { checks } from '../../core/checks';
import { fillBurn } from './burn';

export default checks(fillBurn, [
  {
    given: { pressureRatio: 7.824449067, startTemp: '300 K' },
    expect: '540 K',
    within: 1e-9,
    from: 'NACA Report 1135 (from memory), table for γ = 1.4, at Mach 2: T/T_t = 0.5556 and p/p_t = 0.1278, the inverse of 1.8 and 1.8^3.5',
    kind: 'memory',
  },
  {
    given: { pressureRatio: 10, startTemp: '20 °C' },
    expect: '561.3 K',
    within: 0.02,
    from: 'air tables with specific heat that grows with temperature (from memory: p_r 1.2765 at 293 K, 12.77 at 561 K): 1 % lower',
    kind: 'memory',
  },
  { given: { pressureRatio: 1 }, expect: '20 °C', from: 'not compressed, not heated', limit: true },
]);

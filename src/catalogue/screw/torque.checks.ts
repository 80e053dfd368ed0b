import { checks } from '../../core/checks';
import { screwTorque } from './torque';

export default checks(screwTorque, [
  {
    given: { thread: '3/8-16', preload: '4940 lbf' },
    expect: '31 lbf·ft',
    within: 0.005,
    from: 'torque table of SAE J429 grade 5 (engineersedge.com): 4940 lbf, 31 ft-lb at K = 0.20',
    kind: 'secondhand',
  },
  {
    given: { thread: '5/16-18', preload: '3342 lbf', k: 0.15 },
    expect: '157 lbf·in',
    within: 0.003,
    from: 'the same table: 3342 lbf, 157 in-lb at K = 0.15',
    kind: 'secondhand',
  },
  {
    given: { thread: 'M8', preload: '12 kN', k: 0.15 },
    expect: '14.4 N·m',
    within: 1e-12,
    from: 'by hand: 0.15 × 8 × 12',
  },
  {
    given: { thread: '10-32', preload: '800 lbf' },
    expect: '30.4 lbf·in',
    within: 1e-12,
    from: 'by hand: 0.2 × 0.19 × 800',
  },
  { given: { thread: 'M6', preload: '0 N' }, expect: '0 N·m', from: 'no preload, no torque', limit: true },
]);

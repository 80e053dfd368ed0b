import { checks } from '../../core/checks';
import { screwPreload } from './preload';

export default checks(screwPreload, [
  {
    given: { thread: '1/2-13', torque: '75 lbf·ft' },
    expect: '9046 lbf',
    within: 0.006,
    from: 'torque table of SAE J429 grade 5 (engineersedge.com): 75 ft-lb, 9046 lbf at K = 0.20',
    kind: 'secondhand',
  },
  {
    given: { thread: 'M8', torque: '18 N·m', k: 0.15 },
    expect: '15 kN',
    within: 1e-12,
    from: 'by hand: 18/(0.15 × 8)',
  },
  {
    given: { thread: '1/4-20', torque: '80 lbf·in' },
    expect: '1600 lbf',
    within: 1e-12,
    from: 'by hand: 80/(0.2 × 0.25)',
  },
  {
    given: { thread: 'M8', torque: '14.4 N·m', k: 0.15 },
    expect: '12 kN',
    within: 1e-12,
    from: 'inverse of SCREW.TORQUE: 12 kN took 14.4 N·m',
    limit: true,
  },
]);

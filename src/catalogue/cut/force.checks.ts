import { checks } from '../../core/checks';
import { cutForce } from './force';

export default checks(cutForce, [
  {
    given: { chipThickness: '0.05 mm', chipWidth: '3 mm', metal: '6061-T6' },
    expect: '253.7691032 N',
    within: 1e-9,
    from: 'VDI 3323 group 22 (kc1.1 800 MPa, mc 0.25), by hand: 800 × 0.05^−0.25 × 0.15',
    kind: 'secondhand',
  },
  {
    given: { chipThickness: '0.04 mm', chipWidth: '4 mm', metal: 'P20' },
    expect: '580.2837328 N',
    within: 1e-9,
    from: 'VDI 3323 group 7 (kc1.1 1675 MPa, mc 0.24), by hand: 1675 × 0.04^−0.24 × 0.16',
    kind: 'secondhand',
  },
  {
    given: { chipThickness: '1 mm', chipWidth: '1 mm', metal: 'H13 annealed' },
    expect: '2450 N',
    within: 1e-12,
    from: 'VDI 3323 group 10: at a chip of 1 mm by 1 mm the force is kc1.1 itself',
    kind: 'secondhand',
    limit: true,
  },
  {
    given: { chipThickness: '0.1 mm', chipWidth: '2 mm', metal: '2000 MPa' },
    expect: '400 N',
    within: 1e-12,
    from: 'by hand: a given specific force of 2000 MPa on 0.2 mm²',
  },
]);

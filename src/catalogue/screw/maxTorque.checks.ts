import { checks } from '../../core/checks';
import { screwMaxTorque } from './maxTorque';

export default checks(screwMaxTorque, [
  {
    given: { thread: '1/4-20', engagement: '0.5 in', screwStrength: '180 ksi', nutStrength: '45 ksi' },
    expect: '171.83478618 lbf·in',
    within: 1e-8,
    from: 'by hand: the screw bears 0.6 × 180000 × 0.0318212567 = 3436.70 lbf, the hole 4042.3; 0.2 × 0.25 × 3436.70',
  },
  {
    given: { thread: '1/4-20', engagement: '0.25 in', screwStrength: '180 ksi', nutStrength: '45 ksi' },
    expect: '101.05809 lbf·in',
    within: 1e-6,
    from: 'FED-STD-H28/2B area of 0.5389765 in²/in with ASME B1.1 limits, by hand: 0.2 × 0.25 × 0.5 × 45000 × 0.5389765 × 0.25/1.5',
    kind: 'secondhand',
  },
  {
    given: {
      thread: 'M8',
      engagement: '8 mm',
      screwStrength: '1220 MPa',
      nutStrength: '310 MPa',
      k: 0.15,
      margin: 2,
    },
    expect: '12.52059 N·m',
    within: 2e-5,
    from: 'table of thread areas 6H/6g (Bickford; engineersedge.com): 134.63 mm² over 8 mm, by hand: 0.15 × 8 × 0.5 × 310 × 134.63/2',
    kind: 'secondhand',
  },
  {
    given: { thread: 'M10', engagement: '20 mm', screwStrength: '1000 MPa', nutStrength: '1e9 MPa' },
    expect: '69.588 N·m',
    within: 2e-5,
    from: 'in a hole that cannot strip the screw alone counts: stress area 57.990 mm² (same table), 0.2 × 10 × 0.6 × 57.990',
    kind: 'secondhand',
    limit: true,
  },
]);

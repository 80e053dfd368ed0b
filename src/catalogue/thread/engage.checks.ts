import { checks } from '../../core/checks';
import { threadEngage } from './engage';

export default checks(threadEngage, [
  {
    given: { thread: '1/4-20', screwStrength: '180 ksi', nutStrength: '45 ksi' },
    expect: '0.4723213 in',
    within: 1e-5,
    from: 'FED-STD-H28/2B formula 16, by hand: 2 × 0.0318213/0.5389765/(45/180)',
    kind: 'secondhand',
  },
  {
    given: { thread: 'M8', screwStrength: '800 MPa', nutStrength: '800 MPa' },
    expect: '6.0206 mm',
    within: 1e-4,
    from: 'table of thread areas 6H/6g (Bickford; engineersedge.com): 36.609 mm² in tension, 97.290 mm² in shear over 8 mm, by hand: 2 × 36.609 × 8/97.290',
    kind: 'secondhand',
  },
  {
    given: { thread: '10-32', screwStrength: '1040 MPa', nutStrength: '310 MPa', margin: 1.25 },
    expect: '10.9616680089 mm',
    within: 5e-5,
    from: 'FED-STD-H28/2B with ASME B1.1 limits, by hand: 1.25 × 2 × 0.0199942 in²/0.3885732 in × 1040/310',
    kind: 'secondhand',
  },
  {
    given: { thread: 'M8', screwStrength: '800 MPa', nutStrength: '1e9 MPa' },
    expect: '6.0206 mm',
    within: 1e-4,
    from: 'however hard the hole, the screw’s own thread needs its length: the same table',
    kind: 'secondhand',
    limit: true,
  },
]);

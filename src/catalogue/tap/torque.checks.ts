import { checks } from '../../core/checks';
import { tapTorque } from './torque';

export default checks(tapTorque, [
  {
    given: { thread: 'M8', metal: '2600 MPa' },
    expect: '4.0625 N·m',
    within: 1e-9,
    from: 'tap makers’ equation, by hand: 1.25² × 8 × 2600/8000',
  },
  {
    given: { thread: 'M6', metal: '6061-T6' },
    expect: '1.301948782 N·m',
    within: 1e-6,
    from: 'by hand: a chip of 0.54127/12 mm at VDI 3323 group 22, 800 × 0.0451054898^−0.25 = 1735.93171 MPa; 6 × 1735.93171/8000',
    kind: 'secondhand',
  },
  {
    given: { thread: '1/4-20', metal: '400000 psi' },
    expect: '31.25 lbf·in',
    within: 1e-9,
    from: 'by hand: 0.05² × 0.25 × 400000/8',
  },
  {
    given: { thread: 'M6', metal: '0.000001 MPa' },
    expect: '0 N·m',
    within: 1e-8,
    from: 'a metal without resistance takes no torque',
    limit: true,
  },
]);

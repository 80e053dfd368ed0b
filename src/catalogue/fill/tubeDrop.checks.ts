import { checks } from '../../core/checks';
import { fillTubeDrop } from './tubeDrop';

export default checks(fillTubeDrop, [
  {
    given: {
      flow: '6 cm³/s',
      radius: '2.5 mm',
      length: '60 mm',
      consistency: '9000 Pa·s^n',
      powerIndex: 0.35,
    },
    expect: '4.31208443061 MPa',
    within: 1e-10,
    from: 'by hand: 2 × 9000 × 715.924406868^0.35 × 60/2.5 Pa',
  },
  {
    given: {
      flow: '5 cm³/s',
      radius: '2 mm',
      length: '50 mm',
      consistency: '200 Pa·s^n',
      powerIndex: 1,
    },
    expect: '7.95774715459 MPa',
    within: 1e-11,
    from: 'Hagen–Poiseuille law for a Newtonian melt: 8 µ L Q/(π R⁴) = 8 × 200 × 0.05 × 5e-6/(π × 0.002⁴) Pa',
    limit: true,
  },
]);

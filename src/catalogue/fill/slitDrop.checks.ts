import { checks } from '../../core/checks';
import { fillSlitDrop } from './slitDrop';

export default checks(fillSlitDrop, [
  {
    given: {
      flow: '12 cm³/s',
      width: '25 mm',
      gap: '2 mm',
      length: '80 mm',
      consistency: '8000 Pa·s^n',
      powerIndex: 0.4,
    },
    expect: '10.4604285213 MPa',
    within: 1e-10,
    from: 'by hand: 2 × 8000 × 1080^0.4 × 80/2 Pa',
  },
  {
    given: {
      flow: '10 cm³/s',
      width: '20 mm',
      gap: '1.5 mm',
      length: '60 mm',
      consistency: '200 Pa·s^n',
      powerIndex: 1,
    },
    expect: '21.3333333333 MPa',
    within: 1e-11,
    from: 'plane Poiseuille flow of a Newtonian melt: 12 µ L Q/(W h³) = 12 × 200 × 0.06 × 1e-5/(0.02 × 0.0015³) Pa',
    limit: true,
  },
  {
    given: {
      flow: '0 cm³/s',
      width: '20 mm',
      gap: '1.5 mm',
      length: '60 mm',
      consistency: '8000 Pa·s^n',
      powerIndex: 0.4,
    },
    expect: '0 MPa',
    from: 'no flow, no drop',
    limit: true,
  },
]);

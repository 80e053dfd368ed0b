import { checks } from '../../core/checks';
import { fillDiscDrop } from './discDrop';

export default checks(fillDiscDrop, [
  {
    given: {
      flow: '10 cm³/s',
      gap: '2 mm',
      innerRadius: '2 mm',
      outerRadius: '40 mm',
      consistency: '8000 Pa·s^n',
      powerIndex: 0.4,
    },
    expect: '2.68587760344 MPa',
    within: 1e-10,
    from: 'by hand: (2 × 8000/0.002) × [2 × 1.8/0.4 × 1e-5/(2π × 0.002²)]^0.4 × (0.04^0.6 − 0.002^0.6)/0.6 Pa',
  },
  {
    given: {
      flow: '10 cm³/s',
      gap: '2 mm',
      innerRadius: '2 mm',
      outerRadius: '40 mm',
      consistency: '200 Pa·s^n',
      powerIndex: 1,
    },
    expect: '1.43035679855 MPa',
    within: 1e-10,
    from: 'lubrication flow of a Newtonian melt between discs: 6 µ Q ln(r₂/r₁)/(π h³) = 6 × 200 × 1e-5 × ln 20/(π × 0.002³) Pa',
    limit: true,
  },
]);

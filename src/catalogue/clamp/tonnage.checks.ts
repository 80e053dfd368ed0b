import { checks } from '../../core/checks';
import { clampTonnage } from './tonnage';

export default checks(clampTonnage, [
  {
    given: { projectedArea: '2 in²', cavityPressure: '1500 psi', margin: 1.25 },
    expect: '1.875 tonf',
    within: 1e-9,
    from: 'by hand: 2 × 1500 × 1.25/2000',
  },
  {
    given: { projectedArea: '1200 mm²', cavityPressure: '10 MPa' },
    expect: '1.46839134669 tf',
    within: 1e-9,
    from: 'by hand: 1200 × 10 × 1.2/9806.65',
  },
  {
    given: { projectedArea: '1200 mm²', cavityPressure: '0 MPa' },
    expect: '0 tf',
    from: 'no pressure, no force',
    limit: true,
  },
]);

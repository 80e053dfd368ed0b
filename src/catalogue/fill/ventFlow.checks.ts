import { checks } from '../../core/checks';
import { fillVentFlow } from './ventFlow';

export default checks(fillVentFlow, [
  {
    given: { width: '8 mm', depth: '0.015 mm', land: '1.2 mm', overpressure: '0.04 MPa' },
    expect: '4.16666666667 cm³/s',
    within: 1e-10,
    from: 'by hand: 0.008 × 1.5e-5³ × 40000/(12 × 1.8e-5 × 0.0012) m³/s',
  },
  {
    given: { width: '8 mm', depth: '0.015 mm', land: '1.2 mm', overpressure: '0 MPa' },
    expect: '0 cm³/s',
    from: 'no overpressure, no flow',
    limit: true,
  },
]);

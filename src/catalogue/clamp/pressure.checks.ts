import { checks } from '../../core/checks';
import { clampPressure } from './pressure';

export default checks(clampPressure, [
  {
    given: { resin: 'ABS', availablePressure: '12 MPa' },
    expect: '12 MPa',
    within: 1e-12,
    from: 'by hand: 12 MPa is below the 30 to 55 MPa of ABS (from memory)',
    kind: 'memory',
  },
  {
    given: { resin: 'PC' },
    expect: '60 MPa',
    within: 1e-9,
    from: 'by hand: middle of 40 to 80 MPa (from memory)',
    kind: 'memory',
  },
  {
    given: { resin: '30 MPa', availablePressure: '200 MPa' },
    expect: '30 MPa',
    within: 1e-12,
    from: 'a press strong enough leaves the resin’s own',
    limit: true,
  },
]);

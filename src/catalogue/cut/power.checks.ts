import { checks } from '../../core/checks';
import { cutPower } from './power';

export default checks(cutPower, [
  {
    given: {
      radialDepth: '2 mm',
      axialDepth: '4 mm',
      feedRate: '500 mm/min',
      metal: '6061-T6',
      chipThickness: '0.04 mm',
    },
    expect: '0.1192569588 kW',
    within: 1e-9,
    from: 'VDI 3323 group 22 (kc1.1 800 MPa, mc 0.25), by hand: 2 × 4 × 500 × 800 × 0.04^−0.25/60e6',
    kind: 'secondhand',
  },
  {
    given: {
      radialDepth: '2 mm',
      axialDepth: '3 mm',
      feedRate: '600 mm/min',
      metal: '1000 MPa',
      chipThickness: '0.04 mm',
    },
    expect: '60 W',
    within: 1e-12,
    from: 'by hand: 60 mm³ a second at 1000 MPa, that is 1 J/mm³',
    limit: true,
  },
]);

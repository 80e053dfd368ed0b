import { checks } from '../../core/checks';
import { plug } from './cases';
import { seatStiffness } from './stiffness';

export default checks(seatStiffness, [
  {
    given: { ...plug },
    expect: '58091.92 N/mm',
    within: 1e-6,
    from: 'by hand from Lamé: 24π × 0.08748866 × 0.24064674/((725/525 + 0.33)/71700 + 0.71/205000)',
  },
  {
    given: {
      draft: '44.99999999 deg',
      friction: 0,
      seatRadius: '10 mm',
      seatLength: '10 mm',
      blockRadius: '1000 m',
      insertMetal: '70000 MPa',
      blockMetal: '70000 MPa',
    },
    expect: '2199114.857512855 N/mm',
    within: 1e-8,
    from: 'a 45° frictionless cone in an endless block of its own metal: C = 2/E, so K = π L E',
    limit: true,
  },
]);

import { checks } from '../../core/checks';
import { dowelPress } from './press';

export default checks(dowelPress, [
  {
    given: {
      pinDia: '8 mm',
      interference: '0.015 mm',
      length: '16 mm',
      blockDia: '24 mm',
      pinMetal: '207 GPa',
      blockMetal: '7075-T6',
      friction: 0.12,
    },
    expect: '3559.61166517 N',
    within: 1e-5,
    from: 'by hand from Lamé: p = 0.015/(8 × ((640/512 + 0.33)/71700 + 0.7/207000)) = 73.77 MPa, × 0.12 × π × 8 × 16',
  },
  {
    given: {
      pinDia: '6 mm',
      interference: '0.008 mm',
      length: '14 mm',
      blockDia: '22 mm',
      pinMetal: 'H13',
      blockMetal: '6061-T6',
      friction: 0.15,
    },
    expect: '2113.75063375 N',
    within: 1e-6,
    from: 'by hand from Lamé: p = 0.008/(6 × ((520/448 + 0.33)/68900 + 0.7/210000)), × 0.15 × π × 6 × 14',
  },
  {
    given: {
      pinDia: '8 mm',
      interference: '0 mm',
      length: '16 mm',
      blockDia: '24 mm',
      pinMetal: 'H13',
      blockMetal: 'P20',
      friction: 0.12,
    },
    expect: '0 N',
    from: 'without interference it drops in',
    limit: true,
  },
]);

import { checks } from '../../core/checks';
import { ejectPinCount } from './pinCount';

export default checks(ejectPinCount, [
  {
    given: {
      force: '900 N',
      pinDia: '3 mm',
      wall: '1.5 mm',
      allowPressure: '12 MPa',
      allowShear: '5 MPa',
    },
    expect: 13,
    from: 'by hand: 900/(12 × 7.0686) = 10.6 and 900/(5 × 14.137) = 12.7, so 13',
  },
  {
    given: {
      force: '200 lbf',
      pinDia: '0.125 in',
      wall: '0.06 in',
      allowPressure: '1400 psi',
      allowShear: '900 psi',
    },
    expect: 12,
    from: 'by hand: 200/(1400 × 0.012272) = 11.6 and 200/(900 × 0.023562) = 9.4, so 12',
  },
  {
    given: {
      force: '94.24777960769379 N',
      pinDia: '2 mm',
      wall: '1 mm',
      allowPressure: '10 MPa',
      allowShear: '100 MPa',
    },
    expect: 3,
    from: 'a force of just 3 × 10 × π asks for three pins, not four',
    limit: true,
  },
  {
    given: {
      force: '0 N',
      pinDia: '2 mm',
      wall: '1 mm',
      allowPressure: '10 MPa',
      allowShear: '10 MPa',
    },
    expect: 0,
    from: 'a part that falls off needs no pin',
    limit: true,
  },
]);

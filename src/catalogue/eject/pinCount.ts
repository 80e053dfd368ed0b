import { derived, formula, input } from '../../core/define';
import { ALLOWED, ejectionForce, pinDia, wall } from './inputs';

export const ejectPinCount = formula({
  name: 'EJECT.PINCOUNT',
  summary: 'Whole number of ejector pins that keeps pressure and shear of the part within what it bears.',
  inputs: [
    ejectionForce,
    pinDia,
    wall,
    input('allowPressure', 'p_a', 'pressure', {
      above: '0 MPa',
      usual: ['1 MPa', '100 MPa'],
      says: 'Pressure that the part bears under a pin at ejection temperature',
    }),
    input('allowShear', 'tau_a', 'pressure', {
      above: '0 MPa',
      usual: ['0.5 MPa', '60 MPa'],
      says: 'Shear stress that its wall bears at ejection temperature',
    }),
  ],
  steps: {
    n_p: { gives: 'ratio', expr: 'F/(p_a*pi*d^2/4)', says: 'Pins for the pressure under their faces' },
    n_s: { gives: 'ratio', expr: 'F/(tau_a*pi*d*t)', says: 'Pins for the shear around their rims' },
    n: {
      gives: 'count',
      // Without the small allowance a force that just fits three pins would ask for a fourth by rounding.
      expr: 'ceil(max(n_p, n_s) - 1e-9)',
      says: 'The larger of both, in whole pins',
    },
  },
  result: 'n',
  valid: [{ holds: 'n <= 100', says: 'So many pins hardly fit: take larger ones, a stripper or a sleeve.' }],
  sources: [derived('EJECT.PINPRESSURE and EJECT.PINSHEAR solved for the number of pins')],
  notes: [ALLOWED, 'Three or more pins keep a part level; one or two do only under its middle.'],
  related: ['EJECT.PINPRESSURE', 'EJECT.PINSHEAR', 'EJECT.TOTAL', 'PIN.BUCKLE'],
  checks: [
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
  ],
});

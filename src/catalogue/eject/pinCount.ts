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
  cautions: [
    {
      says: 'Each pin must also bear its share without buckling: PIN.BUCKLE. Never reach into an open mold that an ejector can move in.',
    },
  ],
  related: ['EJECT.PINPRESSURE', 'EJECT.PINSHEAR', 'EJECT.TOTAL', 'PIN.BUCKLE'],
});

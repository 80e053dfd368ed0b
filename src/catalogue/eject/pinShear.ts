import { derived, formula } from '../../core/define';
import { ALLOWED, ejectionForce, pinDia, pins, wall } from './inputs';

export const ejectPinShear = formula({
  name: 'EJECT.PINSHEAR',
  summary: 'Shear stress of the part’s wall around the rims of the ejector pins.',
  inputs: [ejectionForce, pins, pinDia, wall],
  steps: {
    A: { gives: 'area', expr: 'pi*d*t', says: 'Rim of one pin through the wall' },
    tau: { gives: 'pressure', expr: 'F/(n*A)', says: 'Force shared by all rims' },
  },
  result: 'tau',
  sources: [derived('Punching: force over the sheared rim, shared evenly')],
  notes: [ALLOWED, 'In shear a resin bears about 0.6 of what it bears in tension (common practice).'],
  cautions: [
    {
      says: 'A pin under a thin, warm wall punches through before it ejects: put pins under ribs and bosses.',
    },
  ],
  related: ['EJECT.PINPRESSURE', 'EJECT.PINCOUNT'],
  checks: [
    {
      given: { force: '300 N', pins: 4, pinDia: '3 mm', wall: '1.5 mm' },
      expect: '5.30516477 MPa',
      within: 1e-8,
      from: 'by hand: 75/(π × 3 × 1.5) = 75/14.1371669',
    },
    {
      given: { force: '120 lbf', pins: 3, pinDia: '0.125 in', wall: '0.08 in' },
      expect: '1273.23954 psi',
      within: 1e-8,
      from: 'by hand: 40/(π × 0.01)',
    },
    {
      given: { force: '300 N', pins: 4, pinDia: '3 mm', wall: '0.75 mm' },
      expect: '10.6103295 MPa',
      within: 1e-8,
      from: 'at a wall of a quarter of the diameter rim and face are equal, and so are shear and pressure',
      limit: true,
    },
  ],
});

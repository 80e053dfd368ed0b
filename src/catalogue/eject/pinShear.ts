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
});

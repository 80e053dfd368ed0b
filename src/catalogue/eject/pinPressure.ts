import { derived, formula } from '../../core/define';
import { ALLOWED, ejectionForce, pinDia, pins } from './inputs';

export const ejectPinPressure = formula({
  name: 'EJECT.PINPRESSURE',
  summary: 'Mean pressure of the ejector pins on the part.',
  inputs: [ejectionForce, pins, pinDia],
  steps: {
    A: { gives: 'area', expr: 'pi*d^2/4', says: 'Face of one pin' },
    p: { gives: 'pressure', expr: 'F/(n*A)', says: 'Force shared by all faces' },
  },
  result: 'p',
  sources: [derived('Force over area, shared evenly')],
  notes: [ALLOWED, 'Pins share a force evenly only where they stand evenly about it.'],
  cautions: [
    {
      says: 'Above what the warm part bears, the pins leave marks, whiten it or go through: add pins, or a larger face.',
    },
  ],
  related: ['EJECT.PINSHEAR', 'EJECT.PINCOUNT', 'PIN.BUCKLE'],
});

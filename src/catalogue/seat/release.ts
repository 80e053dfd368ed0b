import { derived, formula, input } from '../../core/define';
import { draft, frictionAngle, push, spreading } from './inputs';

export const seatRelease = formula({
  name: 'SEAT.RELEASE',
  summary: 'Push that breaks a tapered seat loose after the seating push is gone; 0 if it lets go by itself.',
  inputs: [
    push,
    draft,
    input('seatFriction', 'mu', 'ratio', {
      min: 0,
      max: 1,
      usual: [0.05, 0.6],
      says: 'Coefficient of friction while the insert slides in',
    }),
    input('releaseFriction', 'mu_s', 'ratio', {
      min: 0,
      max: 1,
      usual: [0.05, 0.8],
      sameAs: 'seatFriction',
      says: 'Coefficient of friction at the moment of release, usually higher',
    }),
  ],
  steps: {
    ...frictionAngle,
    ...spreading,
    phi_s: { gives: 'angle', expr: 'atan(mu_s)', says: 'Friction angle at the moment of release' },
    R: {
      gives: 'force',
      expr: 'S*max(0, tan(phi_s - alpha))',
      says: 'Push against friction, helped by the taper; nothing where the taper wins',
    },
  },
  result: 'R',
  changes: [
    {
      basis: 2,
      says: 'An elastic seat keeps its radial force, not its normal force, when friction turns round: 2 to 8 % less at usual friction.',
    },
  ],
  sources: [
    derived(
      'Free body of the locked insert on an elastic seat: release friction against the taper, the radial force unchanged',
    ),
  ],
  notes: [
    'Seating and release friction are different numbers: a seat that has rested, warmed or dried holds harder than it slid. ' +
      'Where the draft is larger than the friction angle the insert lets go by itself while the push is taken off.',
  ],
  cautions: [
    {
      when: 'mu_s >= tan(alpha) and mu < tan(alpha)',
      says: 'The seat slides back while the push is taken off unless release friction already holds it: count on this push in full.',
    },
    {
      says: 'This is the seat alone: add the spring, the grip of the part and any vacuum. Keep hands clear: a seat that lets go at once throws the insert and whoever pushes it.',
    },
  ],
  related: ['SEAT.FREEDRAFT', 'SEAT.PUSHOUT', 'SEAT.SLIDEBACK'],
});

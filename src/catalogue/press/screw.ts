import { derived, input, secondHand } from '../../core/define';

/** A power screw with a collar: what turns the screw, and what it clamps. */
export const lead = input('lead', 'l', 'length', {
  above: '0 mm',
  usual: ['0.3 mm', '30 mm'],
  says: 'Advance in one turn',
});
export const meanDia = input('meanDia', 'd_m', 'length', {
  above: '0 mm',
  usual: ['3 mm', '100 mm'],
  says: 'Mean diameter of the thread',
});
export const screwFriction = input('friction', 'mu', 'ratio', {
  min: 0,
  max: 1,
  usual: [0.05, 0.4],
  says: 'Coefficient of friction of the thread',
});
export const flankHalfAngle = input('flankHalfAngle', 'beta', 'angle', {
  min: '0 deg',
  below: '60 deg',
  default: '14.5 deg',
  says: 'Half angle between the flanks: 14.5 for an Acme thread, 30 for a 60° one, 0 for a square one',
});
export const collarFriction = input('collarFriction', 'mu_c', 'ratio', {
  min: 0,
  max: 1,
  default: 0,
  says: 'Coefficient of friction of the collar',
});
export const collarDia = input('collarDia', 'd_c', 'length', {
  min: '0 mm',
  default: '0 mm',
  says: 'Mean diameter of the collar; 0 without one',
});
export const screwInputs = [lead, meanDia, screwFriction, flankHalfAngle, collarFriction, collarDia] as const;

export const POWER_SCREW = secondHand(
  'Shigley’s Mechanical Engineering Design, power screws, by the solution of problem 8-4 read at a public page: torque to raise and to lower a load, with collar',
);
export const WEDGE = derived('The thread unrolled as a wedge of height l on the length π d_m');

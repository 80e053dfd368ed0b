import { commonPractice, derived, input, secondHand, type Change } from '../../core/define';

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
  usual: ['0 deg', '30 deg'],
  says: 'Half angle between the flanks: 14.5 for an Acme thread, 30 for a 60° one, 0 for a square one',
});
export const collarFriction = input('collarFriction', 'mu_c', 'ratio', {
  min: 0,
  max: 1,
  sameAs: 'friction',
  usual: [0.05, 0.4],
  says: 'Coefficient of friction of the collar; 0 only where a thrust bearing carries the screw',
});
export const collarDia = input('collarDia', 'd_c', 'length', {
  min: '0 mm',
  optional: true,
  usual: ['4 mm', '160 mm'],
  says: 'Mean diameter of the collar; left out: 1.5 times meanDia',
});
/** What turns with the screw under its load: a collar, a shoulder or the tip itself. */
export const collar = {
  d_k: {
    gives: 'length',
    expr: 'given(d_c) ? d_c : 1.5*d_m',
    says: 'Mean diameter of the collar; of a usual one half as much again as the thread’s',
  },
  r_c: { gives: 'length', expr: 'mu_c*d_k/2', says: 'Torque of the collar for each unit of force' },
} as const;

export const COLLAR = commonPractice(
  'A collar or tip rubs on about 1.5 times the mean diameter of the thread',
);
export const COLLAR_NOTE =
  'Every screw rubs where it ends, on a collar or on its tip: without that the force would come out up to twice too high. Give the collar a friction of 0 only where a thrust bearing carries it.';

export const screwInputs = [lead, meanDia, screwFriction, flankHalfAngle, collarFriction, collarDia] as const;

export const POWER_SCREW = secondHand(
  'Shigley’s Mechanical Engineering Design, power screws, by the solution of problem 8-4 read at a public page: torque to raise and to lower a load, with collar',
);
export const WEDGE = derived('The thread unrolled as a wedge of height l on the length π d_m');

export const COLLAR_CHANGE: Change = {
  basis: 2,
  says: 'A collar that is left out rubs with the friction of the thread on 1.5 times the mean diameter; give its friction as 0 where a thrust bearing carries the screw.',
};

import { input, type Step } from '../../core/define';
import { metal } from '../metals';

/** What the functions of the tapered seat share: their inputs, and the stiffness of a round seat. */

export const push = input('push', 'F', 'force', {
  min: '0 N',
  usual: ['20 N', '50 kN'],
  says: 'Axial push that drives the insert home',
});
export const draft = input('draft', 'alpha', 'angle', {
  above: '0 deg',
  below: '45 deg',
  usual: ['0.5 deg', '30 deg'],
  says: 'Draft of the seat per side, from the direction of push',
});
export const friction = input('friction', 'mu', 'ratio', {
  min: 0,
  max: 1,
  usual: [0.05, 0.6],
  says: 'Coefficient of friction of the pair while the insert slides in',
});

export const seatRadius = input('seatRadius', 'r', 'length', {
  above: '0 mm',
  usual: ['1 mm', '150 mm'],
  says: 'Mean radius of the conical contact',
});
export const seatLength = input('seatLength', 'L', 'length', {
  above: '0 mm',
  usual: ['1 mm', '200 mm'],
  says: 'Axial length of contact',
});
export const blockRadius = input('blockRadius', 'b', 'length', {
  above: '0 mm',
  usual: ['2 mm', '500 mm'],
  says: 'Outer radius of the block around the seat; for a square block half its width',
});
export const insertMetal = metal('insertMetal', 'i', 'Metal of the insert');
export const blockMetal = metal('blockMetal', 'o', 'Metal of the block');

/** A round insert in its block, as the sinks and stiffnesses take it. */
export const roundSeat = [
  draft,
  friction,
  seatRadius,
  seatLength,
  blockRadius,
  insertMetal,
  blockMetal,
] as const;

export const blockHoldsSeat = {
  when: 'b <= r',
  argument: 'blockRadius',
  says: 'must be larger than {seatRadius}',
} as const;

/** Lamé's thick ring around a solid plug, and what it gives way along the axis. */
export const roundStiffness = {
  phi: { gives: 'angle', expr: 'atan(mu)', says: 'Friction angle' },
  C: {
    gives: 'reciprocalPressure',
    expr: '((b^2 + r^2)/(b^2 - r^2) + nu_o)/E_o + (1 - nu_i)/E_i',
    says: 'Radial compliance of block and plug',
  },
  K: {
    gives: 'stiffness',
    expr: '2*pi*L*tan(alpha)*tan(alpha + phi)/C',
    says: 'Axial stiffness of the seat while it is pushed in',
  },
} as const satisfies Record<string, Step>;

export const FREE_BODY = 'Free body of the insert sliding in, Coulomb friction on both flanks';
export const LAME =
  'Lamé thick cylinder: ring and solid plug under the mean radial pressure F cot(α+φ)/(2π r L)';

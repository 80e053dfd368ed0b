import { derived, input, type Step } from '../../core/define';
import { metal } from '../metals';

/** What the functions of the tapered seat share: their inputs, the forces on it and what it gives way. */

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

export const injectionPush = input('injectionPush', 'F_i', 'force', {
  min: '0 N',
  usual: ['20 N', '50 kN'],
  says: 'Axial push of the melt on the insert',
});

export const seatingPush = input('seatingPush', 'F_s', 'force', {
  min: '0 N',
  default: '0 N',
  usual: ['0 N', '50 kN'],
  says: 'Largest push that drove the insert home before milling, if it then fell straight to the milling push; 0 if it was not pushed harder',
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

export const frictionAngle = {
  phi: { gives: 'angle', expr: 'atan(mu)', says: 'Friction angle' },
} as const satisfies Record<string, Step>;

export const normalForce = {
  N: {
    gives: 'force',
    expr: 'F/(sin(alpha) + mu*cos(alpha))',
    says: 'Axial balance while the insert slides in: F = N sin α + µ N cos α',
  },
} as const satisfies Record<string, Step>;

/** What the flanks spread the block with; on an elastic seat it stays when friction turns round. */
export const spreading = {
  S: {
    gives: 'force',
    expr: 'F/tan(alpha + phi)',
    says: 'The flank’s reaction leans by draft and friction angle together: S = F cot(α+φ)',
  },
} as const satisfies Record<string, Step>;

/**
 * The memory of an elastic seat with friction: a load that falls leaves the insert where it is until friction has turned
 * round all the way, and for good where the draft is not above the friction angle.
 */
export const slidingBack = {
  t: {
    gives: 'ratio',
    // At a draft that is the friction angle itself rounding must not decide.
    expr: 'tan(alpha) > mu*(1 + 1e-9) ? tan(alpha - phi)/tan(alpha + phi) : 0',
    says: 'Part of its seating push at which the insert starts to slide back; 0: it locks',
  },
} as const satisfies Record<string, Step>;

/** Stress around a round seat that bears a push. */
export const roundStress = <const F extends string>(borne: F) =>
  ({
    p_r: {
      gives: 'pressure',
      expr: `${borne}/(2*pi*r*L*tan(alpha + phi))`,
      says: 'Mean radial pressure on the seat',
    },
    sigma_v: {
      gives: 'pressure',
      expr: 'p_r*sqrt(3*b^4 + r^4)/(b^2 - r^2)',
      says: 'Stress of the block at the bore by von Mises, hoop stress and pressure together',
    },
  }) as const satisfies Record<string, Step>;

/** The block yields at its bore, the plug under the pressure alone. */
export const roundStrength = [
  { stress: 'sigma_v', of: 'blockMetal' },
  { stress: 'p_r', of: 'insertMetal' },
] as const;

/** Lamé’s thick ring around a solid plug, and what it gives way along the axis. */
export const roundStiffness = {
  ...frictionAngle,
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

export const evenContact = {
  holds: 'L >= 0.25*r',
  says: 'The contact is shorter than a quarter of its radius: it bears on its edges, not evenly.',
} as const;

/** An axial stop that the insert may sink onto. */
export const stop = [
  input('stopGap', 'g', 'length', {
    min: '0 mm',
    optional: true,
    usual: ['0 mm', '1 mm'],
    says: 'Gap that the insert sinks before it meets an axial stop',
    whenLeftOut: 'there is no stop',
  }),
  input('stopStiffness', 'K_s', 'stiffness', {
    above: '0 N/mm',
    optional: true,
    usual: ['1 kN/mm', '100000 kN/mm'],
    says: 'Stiffness of the stop',
    whenLeftOut: 'the stop is rigid',
  }),
] as const;

export const stopHasGap = {
  when: 'given(K_s) and not(given(g))',
  argument: 'stopStiffness',
  says: 'needs a stopGap with it: 0 for a stop that is met at once',
} as const;

/** The sink of a seat of stiffness K, on its own and with the stop. */
export const stoppedSink = {
  z_0: { gives: 'length', expr: 'F/K', says: 'Sink of the seat alone' },
  z: {
    gives: 'length',
    expr: 'given(g) and z_0 > g ? (given(K_s) ? (F + K_s*g)/(K + K_s) : g) : z_0',
    says: 'Sink, shared with the stop once it is met',
  },
} as const satisfies Record<string, Step>;

export const smallSink = {
  holds: 'z <= 0.1*L',
  says: 'The sink is more than a tenth of the contact length: the small-sink equation does not hold.',
} as const;

export const SINK_SCATTER =
  'Expect ± 40 %: real seats bed in by 2 to 5 µm in the first cycles (common practice), and an angle error bears at one end.';

export const HYSTERESIS = derived(
  'Coulomb friction on an elastic ring: the radial force follows the sink alone, and friction turns round before the insert moves back',
);

export const FREE_BODY = 'Free body of the insert sliding in, Coulomb friction on both flanks';
export const LAME =
  'Lamé thick cylinder: ring and solid plug under the mean radial pressure F cot(α+φ)/(2π r L)';

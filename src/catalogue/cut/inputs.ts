import { commonPractice, constant, derived, input, type Step } from '../../core/define';

/** What the functions of milling share. */

export const radialDepth = input('radialDepth', 'a_e', 'length', {
  above: '0 mm',
  usual: ['0.01 mm', '60 mm'],
  says: 'Radial depth of cut: how far the cutter stands into the wall',
});
export const axialDepth = input('axialDepth', 'a_p', 'length', {
  above: '0 mm',
  usual: ['0.01 mm', '60 mm'],
  says: 'Axial depth of cut',
});
export const diameter = input('diameter', 'D', 'length', {
  above: '0 mm',
  usual: ['0.2 mm', '100 mm'],
  says: 'Diameter of cutter or drill',
});
export const feedRate = input('feedRate', 'v_f', 'feedRate', {
  above: '0 mm/min',
  usual: ['5 mm/min', '15000 mm/min'],
  says: 'Feed rate',
});
export const chipThickness = input('chipThickness', 'h', 'length', {
  above: '0 mm',
  usual: ['0.002 mm', '0.5 mm'],
  says: 'Thickness of the chip, as CUT.CHIP gives it',
});

/** A ball cutter in passes across a plane slope. */
export const ballDia = input('ballDia', 'D', 'length', {
  above: '0 mm',
  usual: ['0.2 mm', '32 mm'],
  says: 'Diameter of the ball cutter',
});
export const slope = input('slope', 'beta', 'angle', {
  usual: ['0 deg', '85 deg'],
  min: '0 deg',
  below: '90 deg',
  default: '0 deg',
  says: 'Slope of the surface across the passes, from the horizontal',
});
export const scallop = (symbol: string) =>
  input('scallop', symbol, 'length', {
    above: '0 mm',
    usual: ['0.0001 mm', '0.5 mm'],
    says: 'Height of the scallop that may be left, square to the surface',
  });
export const TWO_CIRCLES = derived(
  'Two circles of the ball’s radius side by side: the scallop stands where they cross',
);
export const SHARP_BALL =
  'The scallop of the geometry: deflection, runout and feed marks come on top. On a hollow that is hardly larger than the ball the scallop is lower, ' +
  'on a round it is higher.';

/** How far round the tooth is engaged at the deepest, before the chip thickness. */
export const engagement = {
  s: {
    gives: 'ratio',
    expr: '2*a_e < D ? 2*sqrt(a_e/D*(1 - a_e/D)) : 1',
    says: 'Sine of the angle at which the tooth meets the wall; from half the diameter on a tooth passes the full chip',
  },
} as const satisfies Record<string, Step>;
export const withinCutter = {
  when: 'a_e > D',
  argument: 'radialDepth',
  says: 'must not be larger than {diameter}: the cutter cuts no wider than itself',
} as const;
export const CIRCLE_PATH = derived(
  'Tooth path taken as a circle: chip thickness is the feed per tooth times the sine of the engagement',
);

export const smallFeed = {
  holds: 'f_z <= 0.1*D',
  says: 'The feed per tooth is more than a tenth of the cutter: its path is no circle.',
} as const;

/** A cutter held at its shank, as a stepped cantilever loaded at the tip. */
export const cutterDia = input('cutterDia', 'D', 'length', {
  above: '0 mm',
  usual: ['0.2 mm', '32 mm'],
  says: 'Diameter of the cutter over its flutes',
});
export const reachingCutter = [
  cutterDia,
  input('fluteLength', 'L_f', 'length', {
    above: '0 mm',
    usual: ['0.2 mm', '120 mm'],
    says: 'Length of the fluted part at the tip; of the whole stick-out where no neck is given',
  }),
  input('neckDia', 'd_n', 'length', {
    above: '0 mm',
    optional: true,
    usual: ['0.15 mm', '32 mm'],
    says: 'Diameter of the neck or shank behind the flutes, if there is one',
  }),
  input('neckLength', 'L_n', 'length', {
    min: '0 mm',
    optional: true,
    usual: ['0 mm', '150 mm'],
    says: 'Length of the neck alone, from the flutes to the holder',
  }),
  input('modulus', 'E', 'pressure', {
    above: '0 MPa',
    default: '580 GPa',
    usual: ['180 GPa', '700 GPa'],
    says: 'Young’s modulus of the cutter: carbide 550 to 650 GPa, high speed steel 210 GPa',
  }),
] as const;
export const neckIsWhole = [
  {
    when: 'given(d_n) and not(given(L_n))',
    argument: 'neckLength',
    says: 'must be given together with neckDia',
  },
  {
    when: 'given(L_n) and not(given(d_n))',
    argument: 'neckDia',
    says: 'must be given together with neckLength',
  },
] as const;
export const tipStiffness = {
  d_c: {
    gives: 'length',
    expr: '0.8*D',
    says: 'A fluted part bends like a plain bar of 0.8 times its diameter',
  },
  k_f: {
    gives: 'stiffness',
    expr: '3*pi*E*d_c^4/(64*L_f^3)',
    says: 'Fluted part alone, as a cantilever: 3 E I/L³, I = π d⁴/64',
  },
  k: {
    gives: 'stiffness',
    expr: 'given(d_n) and given(L_n) ? 1/(1/k_f + 64*((L_f + L_n)^3 - L_f^3)/(3*pi*E*d_n^4)) : k_f',
    says: 'At the tip; a neck behind the flutes bends too and tilts them',
  },
} as const satisfies Record<string, Step>;
export const slenderCutter = {
  holds: 'L_f + (given(L_n) ? L_n : 0) >= 3*D',
  says: 'The cutter stands out by less than three diameters: shear and holder give way more than its bending.',
} as const;
export const CANTILEVER = [
  derived('Stepped cantilever with a load at its end, by superposition of the parts’ bending'),
  commonPractice('A fluted part counts as a bar of 0.8 times its diameter'),
] as const;
export const CANTILEVER_NOTE =
  'Holder, collet and spindle are not in it: they add 0.2 to 1 µm per newton (common practice), more than a short cutter itself. ' +
  'Bending grows with the cube of the length and falls with the fourth power of the diameter: a neck that is one size thicker helps more than any speed.';
export const BREAKING = {
  says: 'A thin cutter breaks without warning: guards shut and eyes covered.',
} as const;

export const chipLimits = {
  h_1: constant('length', '0.02 mm', 'Thinnest chip of the law'),
  h_2: constant('length', '1 mm', 'Thickest chip of the law'),
} as const;
/** Kienzle's law holds for this range of chip thickness; below it the edge rubs. */
export const chipInRange = {
  holds: 'h >= h_1 and h <= h_2',
  says: 'The law holds for chips of 0.02 to 1 mm: thinner ones are near the edge radius, where the force is higher than this.',
} as const;

export const WORK_HOLDING =
  'What the cutter pushes with, vise and clamps must hold: a part that moves is thrown, and a cutter that catches breaks. Guards shut, eyes covered, speed and load within the makers’ limits.';

import { constant, fromMemory, input, secondHand, type Step } from '../../core/define';
import { ring, springModulus } from './inputs';

/** What the two functions of a disc spring share. */

export const disc = [
  ...ring,
  input('coneHeight', 'h_0', 'length', {
    above: '0 mm',
    usual: ['0.05 mm', '10 mm'],
    says: 'Height of the unloaded cone: overall height less thickness',
  }),
  input('deflection', 's', 'length', {
    min: '0 mm',
    usual: ['0 mm', '10 mm'],
    says: 'Deflection of one disc, at most flat',
  }),
] as const;

export const discMetal = [
  springModulus,
  input('poisson', 'nu', 'ratio', {
    min: 0,
    below: 0.5,
    default: 0.3,
    usual: [0.25, 0.35],
    says: 'Poisson’s ratio',
  }),
] as const;

export const notPastFlat = {
  when: 's > h_0',
  argument: 'deflection',
  says: 'must not be more than {coneHeight}: the disc is flat there',
} as const;

export const discStrain = {
  delta: { gives: 'ratio', expr: 'D_e/D_i', says: 'Ratio of the diameters' },
  K_1: {
    gives: 'ratio',
    expr: '1/pi*((delta - 1)/delta)^2/((delta + 1)/(delta - 1) - 2/ln(delta))',
    says: 'Shape factor of the ring',
  },
  q: {
    gives: 'pressure',
    expr: '4*E/(1 - nu^2)*t^2/(K_1*D_e^2)*(s/t)',
    says: 'Stress scale at this deflection',
  },
} as const satisfies Record<string, Step>;

/** Limits of the equation that are no ratios. */
export const discLimits = {
  t_c: constant('length', '6 mm', 'Thickness from which discs have contact flats'),
} as const;

// The standard's own discs run from h0/t 0.37 to 1.31 and are within its range.
export const discIsUsual = [
  {
    holds: 'delta >= 1.75 and delta <= 2.5',
    says: 'The diameter ratio is not between 1.75 and 2.5: the ring does not turn as a rigid section.',
  },
  {
    holds: 'h_0 >= 0.35*t and h_0 <= 1.35*t',
    says: 'The cone height is not about 0.4 to 1.3 of the thickness, the range of standard discs.',
  },
  {
    holds: 'D_e >= 16*t and D_e <= 40*t',
    says: 'The outside diameter is not 16 to 40 times the thickness, the range of standard discs.',
  },
  {
    holds: 't < t_c',
    says: 'Discs of 6 mm and more have contact flats, which make them stiffer than computed here.',
  },
  {
    // Tables round three quarters of the cone height up to a hundredth of a millimetre.
    holds: 's <= 0.78*h_0',
    says: 'Deflected by more than three quarters of the cone height: the disc beds on its neighbor and the force rises above the equation.',
  },
] as const;

export const DISC_SOURCES = [
  fromMemory('Almen and Laszlo, 1936; DIN 2092 and EN 16984, discs without contact flats'),
  secondHand('DIN 2093 series A: loads and stresses tabulated at a public page'),
] as const;

export const DISC_LIFE =
  'Preload discs by 15 to 20 % of the cone height, or the upper inside edge cracks in use (common practice).';

import { choice, derived, formula, fromMemory, input } from '../../core/define';
import { plateMetal, pressure, PRESSED_PLATE } from './inputs';

export const plateWall = formula({
  name: 'PLATE.WALL',
  summary: 'Bulge of a straight cavity wall: the smaller of held at its foot and held at both ends.',
  inputs: [
    input('length', 'L', 'length', {
      above: '0 mm',
      usual: ['2 mm', '1 m'],
      says: 'Length of the wall between its corners',
    }),
    input('depth', 'h', 'length', {
      above: '0 mm',
      usual: ['0.5 mm', '300 mm'],
      says: 'Depth of the cavity along the wall',
    }),
    input('thickness', 's', 'length', {
      above: '0 mm',
      usual: ['1 mm', '200 mm'],
      says: 'Thickness of the wall',
    }),
    pressure,
    plateMetal,
    choice('ends', ['lower', 'cantilever', 'fixed'], {
      default: 'lower',
      says: 'How the wall is held: at its foot (cantilever), at both ends (fixed), or whichever bulges less (lower)',
    }),
  ],
  steps: {
    u_c: {
      gives: 'length',
      expr: '1.5*p*h^4/(E*s^3)',
      says: 'A strip held at its foot, free at its rim: p h⁴/(8 E I) with I = s³/12',
    },
    u_f: {
      gives: 'length',
      expr: 'p*L^4/(32*E*s^3)',
      says: 'A strip held at both ends, in the middle: p L⁴/(384 E I)',
    },
    q: {
      gives: 'ratio',
      by: 'ends',
      cases: {
        lower: 'u_c <= u_f ? 0.8*(1 + nu)*(s/h)^2 : 9.6*(1 + nu)*(s/L)^2',
        cantilever: '0.8*(1 + nu)*(s/h)^2',
        fixed: '9.6*(1 + nu)*(s/L)^2',
      },
      says: 'What shear would add, as a part of the bulge given; it is left out',
    },
    sigma: {
      gives: 'pressure',
      by: 'ends',
      cases: {
        lower: 'u_c <= u_f ? 3*p*h^2/s^2 : p*L^2/(2*s^2)',
        cantilever: '3*p*h^2/s^2',
        fixed: 'p*L^2/(2*s^2)',
      },
      says: 'Bending stress where it is held, to compare with the yield of the metal',
    },
    u: {
      gives: 'length',
      by: 'ends',
      cases: { lower: 'min(u_c, u_f)', cantilever: 'u_c', fixed: 'u_f' },
      says: 'A real wall is held both ways, and bulges less than either',
    },
  },
  result: 'u',
  valid: [
    {
      holds: 'q <= 0.1',
      says: 'The wall is thick for the depth or length that it spans: shear, which is left out, adds more than a tenth. The step q tells how much.',
    },
    { holds: 'u <= s/4', says: 'The bulge is large against the thickness: the equation is for small ones.' },
  ],
  sources: [
    derived(
      'Beam strips one unit wide under even pressure, bending only; shear beside it by the unit-load integral',
    ),
    fromMemory('Roark, Formulas for Stress and Strain, beam tables: w L⁴/(8 E I) and w L⁴/(384 E I)'),
  ],
  notes: [
    'Keep the bulge below the shrinkage of the part’s wall, or the relaxing cavity grips the part.',
    'A wall as thick as it is deep gives by shear as much again as by the bending counted here, and its foot turns as well: take the value as a lower bound where SHOW.CHECK speaks.',
  ],
  cautions: [{ says: PRESSED_PLATE }],
  related: ['PLATE.RING', 'PLATE.SAG', 'SHRINK.PART'],
});

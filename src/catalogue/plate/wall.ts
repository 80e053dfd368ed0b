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
    G: { gives: 'pressure', expr: 'E/(2*(1 + nu))', says: 'Shear modulus' },
    u_c: {
      gives: 'length',
      expr: '1.5*p*h^4/(E*s^3) + 0.6*p*h^2/(G*s)',
      says: 'A strip held at its foot, free at its rim: bending p h⁴/(8 E I) with I = s³/12, and shear, 6/5 for the section',
    },
    u_f: {
      gives: 'length',
      expr: 'p*L^4/(32*E*s^3) + 0.15*p*L^2/(G*s)',
      says: 'A strip held at both ends, in the middle: bending p L⁴/(384 E I), and shear',
    },
    l: {
      gives: 'length',
      by: 'ends',
      cases: { lower: 'u_c <= u_f ? h : L/2', cantilever: 'h', fixed: 'L/2' },
      says: 'From where the wall is held to where it bulges most',
    },
    sigma: {
      gives: 'pressure',
      by: 'ends',
      cases: {
        lower: 'u_c <= u_f ? 3*p*h^2/s^2 : p*L^2/(2*s^2)',
        cantilever: '3*p*h^2/s^2',
        fixed: 'p*L^2/(2*s^2)',
      },
      says: 'Bending stress where it is held',
    },
    u: {
      gives: 'length',
      by: 'ends',
      cases: { lower: 'min(u_c, u_f)', cantilever: 'u_c', fixed: 'u_f' },
      says: 'A real wall is held both ways, and bulges less than either',
    },
  },
  result: 'u',
  strength: [{ stress: 'sigma', of: 'metal' }],
  valid: [
    {
      holds: 's <= l',
      says: 'The wall is thicker than it is deep, or than half its length: it is a block and no beam, and the bulge is a rough guide.',
    },
    { holds: 'u <= s/4', says: 'The bulge is large against the thickness: the equation is for small ones.' },
  ],
  changes: [
    {
      basis: 2,
      says: 'Shear is counted, so that a wall that is thick for its depth bulges more.',
    },
  ],
  sources: [
    derived('Beam strips one unit wide under even pressure: unit-load integral of moment and shear'),
    fromMemory('Roark, Formulas for Stress and Strain, beam tables: w L⁴/(8 E I) and w L⁴/(384 E I)'),
  ],
  notes: [
    'Keep the bulge below the shrinkage of the part’s wall, or the relaxing cavity grips the part.',
    'Of a wall as thick as it is deep half the bulge is shear, and its foot turns as well, which is left out: take the value as a lower bound there.',
    'Stress and margin belong to the way of holding that gives the bulge.',
  ],
  cautions: [{ says: PRESSED_PLATE }],
  related: ['PLATE.RING', 'PLATE.SAG', 'SHRINK.PART'],
});

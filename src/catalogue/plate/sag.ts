import { derived, formula, input, fromMemory } from '../../core/define';
import {
  loadLength,
  loadWidth,
  patchOnPlate,
  plateMetal,
  pressure,
  PRESSED_PLATE,
  span,
  width,
} from './inputs';

export const plateSag = formula({
  name: 'PLATE.SAG',
  summary: 'Sag in the middle of a plate on two rails under a pressed patch, bending and shear.',
  inputs: [
    span,
    width,
    input('thickness', 't', 'length', {
      above: '0 mm',
      usual: ['1 mm', '200 mm'],
      says: 'Thickness of the plate',
    }),
    pressure,
    loadLength,
    loadWidth,
    plateMetal,
  ],
  refuse: patchOnPlate,
  steps: {
    W: { gives: 'force', expr: 'p*c*w', says: 'Load on the patch' },
    z_b: {
      gives: 'length',
      expr: 'W*(8*L^3 - 4*L*c^2 + c^3)/(32*E*b*t^3)',
      says: 'Bending of a beam on two supports, load over its middle c, with I = b t³/12',
    },
    G: { gives: 'pressure', expr: 'E/(2*(1 + nu))', says: 'Shear modulus' },
    z_s: {
      gives: 'length',
      expr: '1.2*W*(2*L - c)/(8*G*b*t)',
      says: 'Shear, 6/5 for the rectangular section: no small matter in a short thick plate',
    },
    sigma: {
      gives: 'pressure',
      expr: '0.75*W*(2*L - c)/(b*t^2)',
      says: 'Bending stress in the middle: moment of the patch over the section modulus',
    },
    z: { gives: 'length', expr: 'z_b + z_s', says: 'Bending and shear together' },
  },
  result: 'z',
  strength: [{ stress: 'sigma', of: 'metal' }],
  valid: [
    {
      holds: 'L >= 1.5*t',
      says: 'The plate is nearly as thick as its span: it is a block and no beam, and the sag is a rough guide.',
    },
    {
      holds: 'b <= w + L',
      says: 'The plate is wider than the patch and the span together: its edges help less than counted on, and it sags more under the patch.',
    },
    { holds: 'z <= t/4', says: 'The sag is large against the thickness: the equation is for small sags.' },
  ],
  sources: [
    derived('Simple beam with a central patch load: unit-load integral of moment and shear'),
    fromMemory('Beam tables: over the whole span 5 w L⁴/(384 E I)'),
  ],
  notes: [
    'Beside the parting line allow no more sag than the vent depth of the resin, or it flashes.',
    'Pillars between the rails divide the span: put in the longest span that is left. Halving a span that is loaded all over leaves a sixteenth of the bending and a quarter of the shear.',
  ],
  cautions: [{ says: PRESSED_PLATE }],
  related: ['PLATE.THICKNESS', 'PLATE.PILLAR', 'PLATE.ROUND', 'FILL.VENT'],
});

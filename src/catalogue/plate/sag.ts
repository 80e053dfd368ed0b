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
      says: 'Bending stress in the middle, to compare with the yield of the metal',
    },
    z: { gives: 'length', expr: 'z_b + z_s', says: 'Bending and shear together' },
  },
  result: 'z',
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
  checks: [
    {
      given: {
        span: '90 mm',
        width: '110 mm',
        thickness: '28 mm',
        pressure: '12 MPa',
        loadLength: '50 mm',
        loadWidth: '60 mm',
        metal: 'P20',
      },
      expect: '0.014361255923 mm',
      within: 1e-9,
      from: 'by hand: W = 36 kN; bending 36000 × 5057000/(32 × 205000 × 110 × 28³) = 0.01149265, shear 1.2 × 36000 × 130/(8 × 79457.36 × 3080) = 0.00286851',
    },
    {
      given: {
        span: '3.5 in',
        width: '4 in',
        thickness: '1 in',
        pressure: '1800 psi',
        loadLength: '2 in',
        loadWidth: '2.2 in',
        metal: '6061-T6',
      },
      expect: '0.00222185555 in',
      within: 1e-8,
      from: 'by hand: W = 7920 lbf; bending 7920 × 295/(32 × 9.993100e6 × 4), shear 1.2 × 7920 × 5/(8 × 3.756805e6 × 4)',
    },
    {
      given: {
        span: '1 m',
        width: '20 mm',
        thickness: '5 mm',
        pressure: '0.01 MPa',
        loadLength: '1 m',
        loadWidth: '20 mm',
        metal: '205 GPa',
      },
      expect: '60.9756098 mm',
      within: 1e-4,
      from: 'a slender beam loaded all over: 5 w L⁴/(384 E I), shear no longer counts',
      limit: true,
    },
    {
      given: {
        span: '200 mm',
        width: '50 mm',
        thickness: '4 mm',
        pressure: '10 MPa',
        loadLength: '0.001 mm',
        loadWidth: '50 mm',
        metal: '200 GPa',
      },
      expect: '0.0015625 mm',
      within: 0.002,
      from: 'a narrow load in the middle: W L³/(48 E I) = 0.5 × 200³/(48 × 200000 × 50 × 4³/12), shear 0.1 %',
      limit: true,
    },
  ],
});

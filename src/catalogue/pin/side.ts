import { choice, derived, formula, fromMemory, input } from '../../core/define';
import { metal } from '../metals';

export const pinSide = formula({
  name: 'PIN.SIDE',
  summary: 'Largest deflection of a core pin under a difference of pressure across it.',
  inputs: [
    input('pressure', 'p', 'pressure', {
      min: '0 MPa',
      usual: ['0.1 MPa', '100 MPa'],
      says: 'Pressure on one side less that on the other, along the whole length',
    }),
    input('pinDia', 'd', 'length', {
      above: '0 mm',
      usual: ['0.5 mm', '50 mm'],
      says: 'Diameter of the pin',
    }),
    input('length', 'L', 'length', {
      above: '0 mm',
      usual: ['1 mm', '300 mm'],
      says: 'Length that stands in the melt, from where the pin is held',
    }),
    metal('metal', '', 'Metal of the pin'),
    choice('ends', ['free', 'seated'], {
      default: 'free',
      says: 'Tip that stands free, or is seated in the other half of the mold',
    }),
  ],
  steps: {
    w: { gives: 'stiffness', expr: 'p*d', says: 'Load on each unit of length' },
    M: {
      gives: 'torque',
      by: 'ends',
      cases: { free: 'w*L^2/2', seated: 'w*L^2/8' },
      says: 'Bending moment where the pin is held, the largest',
    },
    sigma: { gives: 'pressure', expr: '32*M/(pi*d^3)', says: 'Bending stress there' },
    z: {
      gives: 'length',
      by: 'ends',
      cases: {
        free: '8*w*L^4/(pi*E*d^4)',
        seated: '64*w*L^4*(39 + 55*sqrt(33))/(65536*pi*E*d^4)',
      },
      says: 'Largest deflection, with I = π d⁴/64: w L⁴/(8 E I) at a free tip, w L⁴/(184.6 E I) at 0.578 L before a seated one',
    },
  },
  result: 'z',
  strength: [{ stress: 'sigma', of: 'metal' }],
  valid: [
    {
      holds: 'L >= 5*d',
      says: 'The pin is shorter than five diameters: shear, which is left out, adds to the deflection.',
    },
    {
      holds: 'z <= 0.1*L',
      says: 'The deflection is more than a tenth of the length: far outside small bending.',
    },
  ],
  sources: [
    derived('Beam under an even load: held and free, or held and simply supported'),
    fromMemory(
      'Roark, Formulas for Stress and Strain, beam tables: w L⁴/(8 E I), and 0.0054 w L⁴/(E I) at 0.5785 L',
    ),
  ],
  notes: [
    'The difference of pressure is what matters: melt that reaches both sides at once bends nothing. Gated on one side, it is a part of the filling pressure, at worst all of it.',
    'The part’s wall is off by this on either side of the pin: compare it with the tolerance of the wall.',
  ],
  cautions: [
    {
      says: 'A core pin that yields stays bent and catches the part; one that breaks stays in it, and the next shot closes on the piece. Look before you close.',
    },
  ],
  related: ['PIN.STEPBUCKLE', 'PIN.BUCKLE', 'METAL.MARGIN', 'PRESS.INJECTION'],
});

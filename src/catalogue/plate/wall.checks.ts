import { checks } from '../../core/checks';
import { plateWall } from './wall';

export default checks(plateWall, [
  {
    given: { length: '200 mm', depth: '20 mm', thickness: '18 mm', pressure: '25 MPa', metal: '205 GPa' },
    expect: '0.009246210981 mm',
    within: 1e-8,
    from: 'by hand: the foot holds, bending 1.5 × 25 × 20⁴/(205000 × 18³) = 0.00501857, shear 0.6 × 25 × 20²/(78846.154 × 18) = 0.00422764',
  },
  {
    given: {
      length: '3 in',
      depth: '0.8 in',
      thickness: '0.75 in',
      pressure: '2500 psi',
      metal: '6061-T6',
      ends: 'fixed',
    },
    expect: '0.0026988622149 in',
    within: 1e-7,
    from: 'by hand: bending 2500 × 3⁴/(32 × 9.993100e6 × 0.75³), shear 0.15 × 2500 × 3²/(3.7568045e6 × 0.75)',
  },
  {
    given: {
      length: '30 mm',
      depth: '60 mm',
      thickness: '10 mm',
      pressure: '20 MPa',
      metal: '200 GPa',
      ends: 'lower',
    },
    expect: '0.00604125 mm',
    within: 1e-12,
    from: 'a deep short wall is held by its ends: bending 0.00253125, shear 0.15 × 20 × 30²/(76923.077 × 10) = 0.00351, by hand',
  },
  {
    given: {
      length: '400 mm',
      depth: '60 mm',
      thickness: '6 mm',
      pressure: '2 MPa',
      metal: '205 GPa',
      ends: 'cantilever',
    },
    expect: '0.878 mm',
    within: 0.011,
    from: 'of a slender wall shear is a hundredth, and Roark’s w L⁴/(8 E I) is left (from memory): 2 × 60⁴ × 12/(8 × 205000 × 6³)',
    kind: 'memory',
    limit: true,
  },
  {
    given: { length: '200 mm', depth: '20 mm', thickness: '18 mm', pressure: '0 MPa', metal: 'P20' },
    expect: '0 mm',
    from: 'no pressure, no bulge',
    limit: true,
  },
]);

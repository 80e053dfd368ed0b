import { checks } from '../../core/checks';
import { plateWall } from './wall';

export default checks(plateWall, [
  {
    given: { length: '200 mm', depth: '20 mm', thickness: '18 mm', pressure: '25 MPa', metal: '205 GPa' },
    expect: '0.0050185687 mm',
    within: 1e-8,
    from: 'by hand: the foot holds, 1.5 × 25 × 20⁴/(205000 × 18³)',
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
    expect: '0.00150103570 in',
    within: 1e-8,
    from: 'by hand: 2500 × 3⁴/(32 × 9.993100e6 × 0.75³)',
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
    expect: '0.00253125 mm',
    within: 1e-12,
    from: 'a deep short wall is held by its ends: 20 × 30⁴/(32 × 200000 × 10³), by hand',
  },
  {
    given: {
      length: '64 mm',
      depth: '24.31474194085096 mm',
      thickness: '6 mm',
      pressure: '10 MPa',
      metal: '205 GPa',
      ends: 'cantilever',
    },
    expect: '0.118402890696 mm',
    within: 1e-9,
    from: 'where h/L = 48^(−1/4) both ways of holding bulge alike: 10 × 64⁴/(32 × 205000 × 6³)',
    limit: true,
  },
  {
    given: { length: '200 mm', depth: '20 mm', thickness: '18 mm', pressure: '0 MPa', metal: 'P20' },
    expect: '0 mm',
    from: 'no pressure, no bulge',
    limit: true,
  },
]);

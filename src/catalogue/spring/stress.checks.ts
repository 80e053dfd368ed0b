import { checks } from '../../core/checks';
import { springStress } from './stress';

export default checks(springStress, [
  {
    given: { force: '167.9 N', wire: '2.5 mm', meanDia: '28.5 mm' },
    expect: '871.2 MPa',
    within: 1e-3,
    from: 'Shigley, solution of problem 10-3 read at a public page: music wire 2.5 mm, outside diameter 31 mm; 0.45 × 1936 MPa at 167.9 N',
    kind: 'secondhand',
  },
  {
    given: { force: '80 N', wire: '2 mm', meanDia: '14 mm', factor: 'wahl' },
    expect: '432.392149 MPa',
    within: 1e-8,
    from: 'by hand: C = 7, K = 27/24 + 0.615/7, × 8 × 80 × 14/(π × 8)',
  },
  {
    given: { force: '1 kN', wire: '4 mm', meanDia: '16 mm', factor: 'direct' },
    expect: '716.197244 MPa',
    within: 1e-8,
    from: 'by hand: 1.125 × 8 × 1000 × 16/(64 π)',
  },
  {
    given: { force: '0.001 N', wire: '1 mm', meanDia: '1000 m' },
    expect: '2546.479089 MPa',
    within: 3e-6,
    from: 'a straight wire in torsion: 16 T/(π d³) with T = F D/2',
    limit: true,
  },
  {
    given: { force: '0 N', wire: '2 mm', meanDia: '14 mm' },
    expect: '0 MPa',
    from: 'no force, no stress',
    limit: true,
  },
]);

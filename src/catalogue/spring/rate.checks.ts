import { checks } from '../../core/checks';
import { springRate } from './rate';

export default checks(springRate, [
  {
    given: { wire: '2.5 mm', meanDia: '28.5 mm', activeCoils: 13, material: '81 GPa' },
    expect: '1.314 N/mm',
    within: 1e-3,
    from: 'Shigley, solution of problem 10-3 read at a public page: music wire 2.5 mm, outside diameter 31 mm, plain ground, 14 coils',
    kind: 'secondhand',
  },
  {
    given: { wire: '2.5 mm', meanDia: '28.5 mm', activeCoils: 13 },
    expect: '1.314 N/mm',
    within: 1e-3,
    from: 'the same problem with the modulus looked up for music wire of that size',
    kind: 'secondhand',
  },
  {
    given: { wire: '0.063 in', meanDia: '0.5 in', activeCoils: 8 },
    expect: '23.33325 lbf/in',
    within: 1e-6,
    from: 'by hand: 81.7 GPa = 11849583 psi, × 0.063⁴/(8 × 0.125 × 8)',
  },
  {
    given: { wire: '1.6 mm', meanDia: '12 mm', activeCoils: 9, material: '81500 MPa' },
    expect: '4.293004 N/mm',
    within: 1e-6,
    from: 'by hand: 81500 × 6.5536/(8 × 1728 × 9)',
  },
  {
    given: { wire: '2 mm', meanDia: '20 mm', activeCoils: 1e9, material: '80 GPa' },
    expect: '2e-8 N/mm',
    within: 1e-12,
    from: 'endless coils give way: one coil has 80000 × 16/(8 × 8000) = 20 N/mm, a thousand million in series a thousand-millionth',
    limit: true,
  },
]);

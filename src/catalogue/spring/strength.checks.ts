import { checks } from '../../core/checks';
import { springStrength } from './strength';

export default checks(springStrength, [
  {
    given: { material: 'music wire', wire: '2.5 mm' },
    expect: '1936 MPa',
    within: 1e-3,
    units: 'mm',
    from: 'Shigley, solution of problem 10-3 read at a public page',
    kind: 'secondhand',
  },
  {
    given: { material: 'chrome-silicon', wire: '0.08 in' },
    expect: '265349.12 psi',
    within: 1e-7,
    units: 'in',
    from: 'by hand: 202000/0.08^0.108',
  },
  {
    given: { material: 'EN 10270-1 SH', wire: '10 mm' },
    expect: '1400 MPa',
    within: 1e-12,
    from: 'by hand: 2220 − 820 × log₁₀ 10',
  },
  {
    given: { material: 'music wire', wire: '1 mm' },
    expect: '2211 MPa',
    within: 1e-12,
    units: 'mm',
    from: 'at one millimetre the strength is the metric A itself',
    limit: true,
  },
  {
    given: { material: 'music wire', wire: '1 in' },
    expect: '201 ksi',
    within: 1e-12,
    units: 'in',
    from: 'at one inch the strength is the inch A itself',
    limit: true,
  },
]);

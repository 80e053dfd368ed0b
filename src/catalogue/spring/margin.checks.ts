import { checks } from '../../core/checks';
import { springMargin } from './margin';

export default checks(springMargin, [
  {
    given: { force: '167.9 N', wire: '2.5 mm', meanDia: '28.5 mm' },
    expect: 1,
    within: 2e-3,
    units: 'mm',
    from: 'Shigley, solution of problem 10-3 read at a public page: music wire 2.5 mm, outside diameter 31 mm, yields at 167.9 N',
    kind: 'secondhand',
  },
  {
    given: { force: '80 N', wire: '2 mm', meanDia: '14 mm', material: '302 stainless', factor: 'wahl' },
    expect: 1.365791,
    within: 1e-4,
    units: 'mm',
    from: 'by hand: 0.35 × 1867/2^0.146 over 432.392149, Wahl’s factor with C = 7',
  },
  {
    given: {
      force: '1 kN',
      wire: '10 mm',
      meanDia: '100 mm',
      material: 'EN 10270-1 SH',
      factor: 'direct',
    },
    expect: 2.932153143,
    within: 1e-8,
    from: 'by hand: 0.56 × (2220 − 820 × log₁₀ 10) over 1.05 × 8 × 1000 × 100/(1000 π)',
  },
  {
    given: { force: '100 N', wire: '1 mm', meanDia: '10 mm', factor: 'direct' },
    expect: 0.3721104,
    within: 1e-4,
    units: 'mm',
    limit: true,
    from: 'at one millimetre the strength of music wire is A itself: 0.45 × 2211 over 1.05 × 8 × 100 × 10/π',
  },
]);

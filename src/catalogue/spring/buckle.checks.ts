import { checks } from '../../core/checks';
import { springBuckle } from './buckle';

export default checks(springBuckle, [
  {
    given: { freeLength: '80 mm', meanDia: '14 mm' },
    expect: '37.78286 mm',
    within: 1e-6,
    from: 'by hand: 80 × 0.827309 × (1 − √(1 − 0.674797 × (14π/40)²)), γ = 0.395631',
  },
  {
    given: { freeLength: '4 in', meanDia: '0.5 in', seating: 1 },
    expect: '0.176912 in',
    within: 1e-6,
    from: 'by hand: 4 × 0.827309 × (1 − √(1 − 0.674797 × (π/8)²))',
  },
  {
    given: { freeLength: '149 mm', meanDia: '31 mm' },
    expect: 'stable',
    from: 'Shigley’s rule for steel: stable while the free length is below 2.63 D/0.5 = 163 mm',
    kind: 'secondhand',
  },
  {
    given: { freeLength: '30 mm', meanDia: '14 mm' },
    expect: 'stable',
    from: 'a spring little longer than its diameter cannot buckle',
    limit: true,
  },
  {
    given: { freeLength: '10 m', meanDia: '10 mm', seating: 1 },
    expect: '0.0275493 mm',
    within: 1e-5,
    from: 'a long slender one is an Euler column: L₀ (π/λ)²/(2 + 4 γ) = 10000 × 9.8696e-6/3.582524',
    limit: true,
  },
]);

import { checks } from '../../core/checks';
import { MOTT, pinBuckle } from './buckle';

export default checks(pinBuckle, [
  {
    given: {
      pinDia: '0.75 in',
      unguidedLength: '32 in',
      fixity: 1,
      modulus: '30 Mpsi',
      yield: '100 ksi',
    },
    expect: '4473 lbf',
    within: 0.006,
    from: `${MOTT}, example 1: 4473 lbf, with a rounded radius of gyration and slenderness; exact arithmetic gives 4491`,
    kind: 'secondhand',
  },
  {
    given: {
      pinDia: '37.48 mm',
      unguidedLength: '1.5 m',
      fixity: 1,
      modulus: '207 GPa',
      yield: '500 MPa',
    },
    expect: '88 kN',
    within: 0.001,
    from: 'Shigley, example of an Euler column for 4 × 22 kN: 37.48 mm (from memory, redone by hand: d⁴ = 64 P L²/(π³ C E))',
    kind: 'memory',
  },
  {
    given: {
      pinDia: '19.02 mm',
      unguidedLength: '375 mm',
      fixity: 1,
      modulus: '207 GPa',
      yield: '500 MPa',
    },
    expect: '88 kN',
    within: 0.001,
    from: 'Shigley, the same with 375 mm as a Johnson column: 19 mm (from memory, redone by hand: d = 2 √(P/(π S) + S L²/(π² C E)) = 19.02)',
    kind: 'memory',
  },
  {
    given: { pinDia: '4 mm', unguidedLength: '120 mm' },
    expect: '2139.43309 N',
    within: 1e-8,
    from: 'by hand: 1.2 π³ 207000 × 4⁴/(64 × 120²)',
  },
  {
    given: { pinDia: '5 mm', unguidedLength: '60 mm', fixity: 1 },
    expect: '16638.72 N',
    within: 1e-6,
    from: 'by hand: slenderness 48 is below 54.03, so 19.6349541 × (1400 − (1400 × 48/6.28318531)²/207000)',
  },
  {
    given: { pinDia: '5 mm', unguidedLength: '0 mm' },
    expect: '27488.935719 N',
    within: 1e-10,
    from: 'without length it does not buckle but yields: 1400 π 5²/4',
    limit: true,
  },
]);

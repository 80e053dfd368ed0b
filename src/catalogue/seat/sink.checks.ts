import { checks } from '../../core/checks';
import { plug } from './cases';
import { seatSink } from './sink';

export default checks(seatSink, [
  {
    given: { ...plug, push: '3 kN' },
    expect: '0.0516423 mm',
    within: 1e-5,
    from: 'by hand from Lamé: C = (725/525 + 0.33)/71700 + 0.71/205000 = 2.732575e-5 mm²/N, K = 24π tan 5° tan 13.5308°/C',
  },
  {
    given: { ...plug, push: '3 kN', draft: '10 deg', friction: 0 },
    expect: '0.03497033 mm',
    within: 1e-5,
    from: 'without friction z = F C/(2π L tan²α)',
    limit: true,
  },
  {
    given: { ...plug, push: '5 kN', stopGap: '0.01 mm' },
    expect: '0.01 mm',
    within: 1e-12,
    from: 'a rigid stop ends the sink at its gap',
    limit: true,
  },
  {
    given: { ...plug, push: '5 kN', stopGap: '0.01 mm', stopStiffness: '2050 kN/mm' },
    expect: '0.01209625 mm',
    within: 1e-5,
    from: 'springs side by side: (5000 + 2.05e6 × 0.01)/(58091 + 2.05e6)',
  },
]);

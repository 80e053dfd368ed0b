import { checks } from '../../core/checks';
import { clampGap } from './gap';

export default checks(clampGap, [
  {
    given: {
      clampForce: '20 kN',
      openingForce: '26 kN',
      clampStiffness: '40 kN/mm',
      moldStiffness: '400 kN/mm',
    },
    expect: '0.1 mm',
    within: 1e-12,
    from: 'by hand: it parts at 20 × 1.1 = 22 kN, then 4 kN over 40 kN/mm',
  },
  {
    given: {
      clampForce: '4500 lbf',
      openingForce: '6000 lbf',
      clampStiffness: '150000 lbf/in',
      moldStiffness: '900000 lbf/in',
    },
    expect: '0.005 in',
    within: 1e-9,
    from: 'by hand: it parts at 4500 × 7/6 = 5250 lbf, then 750 lbf over 150000 lbf/in',
  },
  {
    given: { clampForce: '20 kN', openingForce: '26 kN', clampStiffness: '40 kN/mm' },
    expect: '0.15 mm',
    within: 1e-12,
    from: 'a mold as stiff as can be parts at the clamp force itself: 6 kN over 40 kN/mm',
    limit: true,
  },
  {
    given: {
      clampForce: '20 kN',
      openingForce: '21.5 kN',
      clampStiffness: '40 kN/mm',
      moldStiffness: '400 kN/mm',
    },
    expect: '0 mm',
    from: 'below 22 kN the squeezed mold follows, and nothing opens',
    limit: true,
  },
]);

import { checks } from '../../core/checks';
import { drillPointLength } from './point';

export default checks(drillPointLength, [
  {
    given: { diameter: '6 mm' },
    expect: '1.80258185708 mm',
    within: 1e-10,
    from: 'by hand: 3/tan 59° = 3/1.66427948',
  },
  {
    given: { diameter: '1/4', pointAngle: '135 deg' },
    expect: '0.0517766952966 in',
    within: 1e-10,
    from: 'by hand: 0.125/tan 67.5° = 0.125/(1 + √2)',
  },
  {
    given: { diameter: '10 mm', pointAngle: '90 deg' },
    expect: '5 mm',
    within: 1e-12,
    from: 'a right-angled point is as long as the radius',
    limit: true,
  },
  {
    given: { diameter: '10 mm', pointAngle: '180 deg' },
    expect: '0 mm',
    within: 1e-12,
    from: 'a flat drill has no point',
    limit: true,
  },
]);

import { checks } from '../../core/checks';
import { pressShot } from './shot';

export default checks(pressShot, [
  {
    given: { plungerDia: '20 mm', stroke: '90 mm' },
    expect: '19.7920337176 cm³',
    within: 1e-9,
    from: 'by hand: 0.7 × π × 2²/4 × 9',
  },
  {
    given: { plungerDia: '20 mm', stroke: '10 mm', usable: 1 },
    expect: '3.14159265359 cm³',
    within: 1e-10,
    from: 'a cylinder of radius and height 1 cm is π cm³',
    limit: true,
  },
]);

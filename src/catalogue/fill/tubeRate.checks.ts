import { checks } from '../../core/checks';
import { fillTubeRate } from './tubeRate';

export default checks(fillTubeRate, [
  {
    given: { flow: '6 cm³/s', radius: '2.5 mm', powerIndex: 0.35 },
    expect: '715.924406868 1/s',
    within: 1e-11,
    from: 'by hand: 4 × 6000/(π × 15.625) × 2.05/1.4',
  },
  {
    given: { flow: '5 cm³/s', radius: '2 mm' },
    expect: '795.7747154595 1/s',
    within: 1e-11,
    from: 'a Newtonian melt has Poiseuille’s rate 4Q/(πR³) = 2500/π',
    limit: true,
  },
]);

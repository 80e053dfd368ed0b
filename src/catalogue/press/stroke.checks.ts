import { checks } from '../../core/checks';
import { pressStroke } from './stroke';

export default checks(pressStroke, [
  {
    given: { shotVolume: '12 cm³', plungerDia: '20 mm' },
    expect: '38.19719 mm',
    within: 1e-6,
    from: 'by hand: 12000/(π × 100)',
  },
  {
    given: { shotVolume: '9 cm³', plungerDia: '18 mm', cushion: '5 mm' },
    expect: '40.3677651315 mm',
    within: 1e-9,
    from: 'by hand: 9000/(π × 81) + 5',
  },
  {
    given: { shotVolume: '0 cm³', plungerDia: '18 mm', cushion: '5 mm' },
    expect: '5 mm',
    within: 1e-12,
    from: 'without a shot only the cushion is left',
    limit: true,
  },
]);

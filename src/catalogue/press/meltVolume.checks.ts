import { checks } from '../../core/checks';
import { pressMeltVolume } from './meltVolume';

export default checks(pressMeltVolume, [
  {
    given: { solidVolume: '10 cm³', resin: 'PP' },
    expect: '12.2297297297 cm³',
    within: 1e-9,
    from: 'by hand from the table: 10 × 905/740',
  },
  {
    given: { solidVolume: '10 cm³', resin: 1 },
    expect: '10 cm³',
    within: 1e-12,
    from: 'equal densities, equal volumes',
    limit: true,
  },
]);

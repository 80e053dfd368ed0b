import { checks } from '../../core/checks';
import { cutSpeed } from './speed';

export default checks(cutSpeed, [
  {
    given: { metal: 'P20', tool: 'HSS', operation: 'drill' },
    expect: '60 ft/min',
    within: 1e-12,
    from: 'handbook table of HSS speeds: P20 annealed, drilling 60 ft/min',
    kind: 'secondhand',
  },
  {
    given: { metal: 'H13 annealed', tool: 'HSS', operation: 'ream' },
    expect: '12.192 m/min',
    within: 1e-12,
    from: 'handbook table of HSS speeds: H10 to H14 annealed, reaming 40 ft/min',
    kind: 'secondhand',
  },
  {
    given: { metal: '420 annealed', tool: 'carbide', operation: 'ream' },
    expect: '225 ft/min',
    within: 1e-12,
    from: 'handbook table: 420 annealed, reaming with carbide 225 ft/min',
    kind: 'secondhand',
  },
  {
    given: { metal: '6061', tool: 'carbide', operation: 'mill' },
    expect: '150 m/min',
    within: 1e-12,
    from: 'of a range the low end: milling aluminum with carbide 150 to 400 m/min (common practice)',
    kind: 'practice',
    limit: true,
  },
]);

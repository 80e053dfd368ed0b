import { checks } from '../../core/checks';
import { fitLower } from './lower';

export default checks(fitLower, [
  {
    given: { size: '8 mm', class: 'm6' },
    expect: '6 µm',
    within: 1e-9,
    from: 'ISO 286-2: 8 m6 is +15 / +6 µm (Machine Drawing, Table 15.2)',
    kind: 'published',
  },
  {
    given: { size: '63 mm', class: 'N7' },
    expect: '-39 µm',
    within: 1e-9,
    from: 'ISO 286-2: 63 N7 is −9 / −39 µm (Machine Drawing, Table 15.3)',
    kind: 'published',
  },
  {
    given: { size: '30 mm', class: 'H7' },
    expect: '0 µm',
    from: 'a hole H begins at the nominal size',
    limit: true,
  },
]);

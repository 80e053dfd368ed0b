import { checks } from '../../core/checks';
import { shrinkCavity } from './cavity';

export default checks(shrinkCavity, [
  {
    given: { partSize: '50 mm', shrinkage: 0.018 },
    expect: '50.9164969450 mm',
    within: 1e-9,
    from: 'by hand: 50/0.982',
  },
  {
    given: { partSize: '75 mm', shrinkage: 'PP' },
    expect: '76.3747454175 mm',
    within: 1e-9,
    from: 'by hand: 75/0.982, 1.8 % being the middle of 1.2 to 2.4 % (general molding guide)',
    kind: 'secondhand',
  },
  {
    given: { partSize: '75 mm', shrinkage: 0 },
    expect: '75 mm',
    within: 1e-12,
    from: 'without shrinkage the part’s own size',
    limit: true,
  },
]);

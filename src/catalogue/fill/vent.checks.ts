import { checks } from '../../core/checks';
import { fillVent } from './vent';

export default checks(fillVent, [
  {
    given: { resin: 'PP' },
    expect: '0.0005 in',
    within: 1e-12,
    from: 'published venting table: PP 0.0005 in and up',
  },
  {
    given: { resin: 'ABS' },
    expect: '0.001 in',
    within: 1e-12,
    from: 'published venting table: ABS 0.001 in and up',
  },
  {
    given: { resin: '0.015 mm' },
    expect: '0.015 mm',
    within: 1e-12,
    from: 'a depth of one’s own is answered as it is',
    limit: true,
  },
]);

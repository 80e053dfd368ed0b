import { checks } from '../../core/checks';
import { fillVent } from './vent';

export default checks(fillVent, [
  {
    given: { resin: 'PP' },
    expect: '0.0005 in',
    within: 1e-12,
    from: 'table of vent depths at viewmold.com: PP 0.0005 in and up',
    kind: 'secondhand',
  },
  {
    given: { resin: 'ABS' },
    expect: '0.001 in',
    within: 1e-12,
    from: 'table of vent depths at viewmold.com: ABS 0.001 in and up',
    kind: 'secondhand',
  },
  {
    given: { resin: '0.015 mm' },
    expect: '0.015 mm',
    within: 1e-12,
    from: 'a depth of one’s own is answered as it is',
    limit: true,
  },
]);

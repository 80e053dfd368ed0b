import { checks } from '../../core/checks';
import { shoulderValue } from './value';

export default checks(shoulderValue, [
  {
    given: { size: '10 mm', property: 'shoulder max' },
    expect: '9.987 mm',
    within: 1e-9,
    from: 'ISO 7379: 9.951 to 9.987 mm, as a maker lists it',
    kind: 'secondhand',
  },
  {
    given: { size: '8 mm', property: 'head dia' },
    expect: '13 mm',
    within: 1e-9,
    from: 'ISO 7379, table',
    kind: 'secondhand',
  },
  {
    given: { size: '3/8 in', property: 'shoulder max' },
    expect: '0.373 in',
    within: 1e-9,
    from: 'ASME B18.3 (from memory): 0.002 in under nominal',
    kind: 'memory',
  },
]);

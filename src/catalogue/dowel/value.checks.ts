import { checks } from '../../core/checks';
import { dowelValue } from './value';

export default checks(dowelValue, [
  {
    given: { size: '1/4 in', property: 'max' },
    expect: '0.2503 in',
    within: 1e-9,
    from: 'ASME B18.8.2-2000, as two independent pages list it',
    kind: 'secondhand',
  },
  {
    given: { size: '5/32 in', property: 'min' },
    expect: '0.15635 in',
    within: 1e-6,
    from: 'ASME B18.8.2: 5/32 and 0.0001 in; a page prints 0.1563',
    kind: 'secondhand',
  },
  {
    given: { size: '8 mm', property: 'max' },
    expect: '8.015 mm',
    within: 1e-9,
    from: 'ISO 286-2: 8 m6 is +15/+6 µm (Machine Drawing, Table 15.2)',
    kind: 'secondhand',
  },
]);

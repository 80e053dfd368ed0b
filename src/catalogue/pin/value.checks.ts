import { checks } from '../../core/checks';
import { pinValue } from './value';

export default checks(pinValue, [
  {
    given: { size: '6 mm', property: 'min' },
    expect: '5.988 mm',
    within: 1e-9,
    from: 'ISO 286-2: 6 g6 is −4/−12 µm (from memory)',
    kind: 'memory',
  },
  {
    given: { size: '4 mm', property: 'head dia' },
    expect: '8 mm',
    within: 1e-9,
    from: 'ISO 6751 (from memory)',
    kind: 'memory',
  },
]);

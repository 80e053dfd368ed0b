import { checks } from '../../core/checks';
import { drillFromSet } from './fromSet';

export default checks(drillFromSet, [
  {
    given: { diameter: '7 mm', set: ['1/4', '9/32', 'J'] },
    expect: 'J',
    from: 'ASME B94.11M sizes, differences by hand: J 0.277, 9/32 0.28125, 7 mm 0.27559 in',
    kind: 'secondhand',
  },
  {
    given: { diameter: '0.2601 in', set: ['E', 'F', 'G'], round: 'down' },
    expect: 'F',
    from: 'ASME B94.11M: F is 0.257, G 0.261 in',
    kind: 'secondhand',
  },
  {
    given: { diameter: '5.08 mm', set: ['5.0 mm', '5.10 mm'] },
    expect: '5.10 mm',
    from: 'by hand: 0.02 against 0.08 mm; the entry as it is written',
  },
  {
    given: { diameter: '6 mm', set: ['1/4', '6 mm', '15/64'] },
    expect: '6 mm',
    from: 'the size of an entry is the entry itself',
    limit: true,
  },
]);

import { checks } from '../../core/checks';
import { screwBore } from './bore';

export default checks(screwBore, [
  {
    given: { thread: 'M6', what: 'dia' },
    expect: '11 mm',
    within: 1e-12,
    from: 'DIN 974-1 series 1 (from memory)',
    kind: 'memory',
  },
  {
    given: { thread: 'M6', what: 'depth' },
    expect: '6.4 mm',
    within: 1e-12,
    from: 'by hand: head of 6 and 0.4',
  },
  {
    given: { thread: '1/4-20', what: 'dia' },
    expect: '7/16 in',
    within: 1e-12,
    from: 'ASME B18.3 (from memory)',
    kind: 'memory',
  },
  {
    given: { thread: '1/4-20', what: 'depth' },
    expect: '17/64 in',
    within: 1e-12,
    from: 'by hand: 1/4 + 1/64',
  },
]);

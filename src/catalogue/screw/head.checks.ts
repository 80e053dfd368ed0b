import { checks } from '../../core/checks';
import { screwHead } from './head';

export default checks(screwHead, [
  {
    given: { thread: 'M6', what: 'dia' },
    expect: '10.22 mm',
    within: 1e-12,
    from: 'ISO 4762, knurled (from memory)',
    kind: 'memory',
  },
  {
    given: { thread: 'M8', what: 'hex' },
    expect: '6 mm',
    within: 1e-12,
    from: 'DIN 912 and ISO 4762 (creativefasteners.co.in)',
    kind: 'secondhand',
  },
  {
    given: { thread: '1/4-20', what: 'hex' },
    expect: '3/16 in',
    within: 1e-12,
    from: 'ASME B18.3-2003 (aftfasteners.com)',
    kind: 'secondhand',
  },
  {
    given: { thread: '3/8-16', what: 'height' },
    expect: '0.375 in',
    within: 1e-12,
    from: 'ASME B18.3: as high as thick',
    kind: 'memory',
  },
  {
    given: { thread: 'M6', what: 'countersunk dia' },
    expect: '13.44 mm',
    within: 1e-12,
    from: 'ISO 10642, as two independent pages list it',
    kind: 'secondhand',
  },
  {
    given: { thread: '1/4-20', what: 'countersunk dia' },
    expect: '0.531 in',
    within: 1e-12,
    from: 'ASME B18.3, as two independent pages list it',
    kind: 'secondhand',
  },
  {
    given: { thread: '10-32', what: 'countersunk angle' },
    expect: '82 deg',
    within: 1e-12,
    from: 'flat heads of inch screws have 82°',
    kind: 'practice',
  },
]);

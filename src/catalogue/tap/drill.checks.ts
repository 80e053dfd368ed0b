import { checks } from '../../core/checks';
import { tapDrill } from './drill';

export default checks(tapDrill, [
  {
    given: { thread: '10-32', percent: '75 %', series: 'inch' },
    expect: '0.159 in',
    within: 1e-9,
    from: 'usual inch tap drill chart: #21 for 10-32 (from memory of ASME B94.11M sizes)',
    kind: 'memory',
  },
  {
    given: { thread: '1/4-20', percent: '75 %', series: 'inch' },
    expect: '0.201 in',
    within: 1e-9,
    from: 'usual inch tap drill chart: #7 for 1/4-20 (from memory)',
    kind: 'memory',
  },
  {
    given: { thread: 'M6' },
    expect: '5 mm',
    within: 1e-9,
    from: 'ISO 2306: 5.0 for M6 (from memory)',
    kind: 'memory',
  },
  {
    given: { thread: 'M12' },
    expect: '10.2 mm',
    within: 1e-9,
    from: 'ISO 2306: 10.2 for M12 (from memory)',
    kind: 'memory',
  },
  {
    given: { thread: '8-32' },
    expect: '0.136 in',
    within: 1e-9,
    from: 'usual inch tap drill charts: #29 for 8-32, an inch drill for an inch thread',
    kind: 'practice',
  },
  {
    given: { thread: '10-32', percent: '75 %', kind: 'wire insert' },
    expect: '0.201 in',
    within: 1e-9,
    from: 'by hand: 0.19 + 1.29904/32 × 0.25 = 0.2001, nearest #7; insert charts agree',
  },
  {
    given: { thread: 'M6', kind: 'wire insert' },
    expect: '6.3 mm',
    within: 1e-9,
    from: 'by hand: 6 + 1.29904 × 0.25 = 6.3248',
  },
  {
    given: { thread: 'M10', percent: '76.98 %', series: 'metric' },
    expect: '8.5 mm',
    within: 1e-9,
    from: 'one pitch off the diameter is 76.98 %, whatever the thread: 10 − 1.5',
    limit: true,
  },
]);

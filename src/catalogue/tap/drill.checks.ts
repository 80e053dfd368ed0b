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
    given: { thread: 'M10', percent: '0.001 %', series: 'metric' },
    expect: '10 mm',
    within: 1e-9,
    from: 'next to no thread: the drill of the major diameter',
    limit: true,
  },
]);

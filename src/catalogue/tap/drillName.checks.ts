import { checks } from '../../core/checks';
import { tapDrillName } from './drillName';

export default checks(tapDrillName, [
  {
    given: { thread: '10-32' },
    expect: '#21',
    from: 'usual inch tap drill chart (from memory)',
    kind: 'memory',
  },
  {
    given: { thread: '3/4-10' },
    expect: '21/32',
    from: 'Machinery’s Handbook, 31st edition, p. 2168, Table 4',
    kind: 'published',
  },
  {
    given: { thread: '1/4-20', kind: 'wire insert' },
    expect: 'H',
    from: 'by hand: 0.25 + 1.29904/20 × 0.25 = 0.2662, H is 0.266',
    kind: 'derived',
  },
  {
    given: { thread: '5/16-18', percent: '75 %', series: 'inch' },
    expect: 'F',
    from: 'usual inch tap drill chart (from memory)',
    kind: 'memory',
  },
  {
    given: { thread: 'M6', percent: '75 %', series: 'metric' },
    expect: '5.0 mm',
    from: 'ISO 2306 (from memory); the nearest drill agrees',
    kind: 'memory',
  },
  {
    given: { thread: 'M10', percent: '76.98 %', series: 'metric' },
    expect: '8.5 mm',
    from: 'one pitch off the diameter is 76.98 %, whatever the thread: 10 − 1.5',
    limit: true,
  },
]);

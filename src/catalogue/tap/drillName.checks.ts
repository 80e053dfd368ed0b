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
    given: { thread: 'M10', percent: '0.001 %', series: 'metric' },
    expect: '10.0 mm',
    from: 'next to no thread: the drill of the major diameter',
    limit: true,
  },
]);

import { checks } from '../../core/checks';
import { threadLimit } from './limit';

export default checks(threadLimit, [
  {
    given: { thread: 'M6', class: '6H', property: 'minor', which: 'max' },
    expect: '5.153 mm',
    within: 1e-9,
    from: 'ISO 965-2 limits of size (from memory): 5.153',
    kind: 'memory',
  },
  {
    given: { thread: 'M10', class: '6g', property: 'pitchdia', which: 'min' },
    expect: '8.862 mm',
    within: 1e-9,
    from: 'ISO 965 table for M10-6g at obliczenia.icad.pl: 8.862 to 8.994',
    kind: 'secondhand',
  },
  {
    given: { thread: '1/4-20', class: '2A', property: 'pitchdia', which: 'min' },
    expect: '0.2127 in',
    within: 1e-9,
    from: 'ASME B1.1-2019 row of 1/4-20 (denavit/ScrewThreadLib)',
    kind: 'secondhand',
  },
  {
    given: { thread: '2-56', class: '2B', property: 'minor', which: 'max' },
    expect: '0.0737 in',
    within: 1e-9,
    from: 'ASME B1.1 table at efunda.com: 0.0667 to 0.0737',
    kind: 'secondhand',
  },
  {
    given: { thread: 'M12', class: '6H', property: 'major', which: 'min' },
    expect: '12 mm',
    within: 1e-12,
    from: 'the hole’s major diameter is never below basic (class H of ISO 965-1)',
    kind: 'memory',
    limit: true,
  },
]);

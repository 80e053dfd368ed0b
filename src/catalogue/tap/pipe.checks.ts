import { checks } from '../../core/checks';
import { tapPipe } from './pipe';

export default checks(tapPipe, [
  {
    given: { size: '1/4' },
    expect: '7/16 in',
    within: 1e-12,
    from: 'Machinery’s Handbook, 31st edition, p. 1005, Table 24a: 7/16 for tapping without reaming',
    kind: 'published',
  },
  {
    given: { size: '1/2 NPT' },
    expect: '23/32 in',
    within: 1e-12,
    from: 'usual NPT chart, as a public page has it',
    kind: 'practice',
  },
  {
    given: { size: 'G 1/2' },
    expect: '19 mm',
    within: 1e-12,
    from: 'list of ISO 228 tap drills on a public page ; the smallest minor diameter of ISO 228-1 is 18.631 mm',
    kind: 'secondhand',
  },
  {
    given: { size: '1/8', kind: 'G' },
    expect: '8.8 mm',
    within: 1e-12,
    from: 'the same list; between 8.566 and 8.848 mm',
    kind: 'secondhand',
  },
  {
    given: { size: '1/4 NPT', kind: 'NPT' },
    expect: '7/16 in',
    within: 1e-12,
    from: 'the kind said twice is the kind',
    limit: true,
  },
]);

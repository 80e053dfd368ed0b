import { checks } from '../../core/checks';
import { tapPercent } from './percent';

export default checks(tapPercent, [
  {
    given: { thread: '1/4-20', drill: '#7' },
    expect: '75.44 %',
    within: 1e-4,
    from: 'tap maker’s technical formulas: 75.44 % for 0.201 in (scribd.com/document/327450604)',
    kind: 'secondhand',
  },
  {
    given: { thread: 'M10', drill: '8.5 mm' },
    expect: '76.9800359 %',
    within: 1e-8,
    from: 'by hand: one pitch of 2 × 3/4 × 0.8660254 pitches',
  },
  {
    given: { thread: '10-32', drill: '#7', kind: 'wire insert' },
    expect: '72.903027366 %',
    within: 1e-9,
    from: 'by hand: (0.19 + 1.29904/32 − 0.201)/(1.29904/32)',
  },
  {
    given: { thread: '1/4-20', drill: '0.2279 in', kind: 'form' },
    expect: '65 %',
    within: 1e-9,
    from: 'by hand: 0.0221/(0.68 × 0.05), the rule of 0.0068 a percent',
  },
  {
    given: { thread: 'M6', drill: '6 mm' },
    expect: '0 %',
    within: 1e-9,
    from: 'a hole as large as the thread leaves none',
    limit: true,
  },
  {
    given: { thread: 'M8', drill: '6.646835 mm' },
    expect: '83.3333 %',
    within: 1e-5,
    from: 'the basic minor diameter, D − 1.0825 P, leaves 5/8 H of 3/4 H',
    limit: true,
  },
]);

import { checks } from '../../core/checks';
import { fitLimits } from './limits';

export default checks(fitLimits, [
  {
    given: { size: '25 mm', class: 'H7' },
    expect: ['25 mm', '25.021 mm'],
    within: 1e-9,
    from: 'ISO 286-2: 25 H7 is +21 / 0 µm (Machine Drawing, Table 15.1)',
    kind: 'published',
  },
  {
    given: { size: '10 mm', class: 'f9' },
    expect: ['9.951 mm', '9.987 mm'],
    within: 1e-9,
    from: 'ISO 7379: limits of a 10 mm shoulder',
    kind: 'secondhand',
  },
  {
    given: { size: '50 mm', class: 'js6' },
    expect: ['49.992 mm', '50.008 mm'],
    within: 1e-9,
    from: 'js lies evenly about the nominal size: half of IT6 = 16 µm',
    limit: true,
  },
]);

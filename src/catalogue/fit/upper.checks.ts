import { checks } from '../../core/checks';
import { fitUpper } from './upper';

export default checks(fitUpper, [
  {
    given: { size: '8 mm', class: 'm6' },
    expect: '15 µm',
    within: 1e-9,
    from: 'ISO 286-2: 8 m6 is +15 / +6 µm (Machine Drawing, Table 15.2)',
    kind: 'published',
  },
  {
    given: { size: '25 mm', class: 'P7' },
    expect: '-14 µm',
    within: 1e-9,
    from: 'ISO 286-2: 25 P7 is −14 / −35 µm (Machine Drawing, Table 15.3)',
    kind: 'published',
  },
  {
    given: { size: '10 mm', class: 'f9' },
    expect: '-13 µm',
    within: 1e-9,
    from: 'ISO 7379: a 10 mm shoulder is 9.951 to 9.987 mm',
    kind: 'secondhand',
  },
  {
    given: { size: '30 mm', class: 'h7' },
    expect: '0 µm',
    from: 'a shaft h reaches up to the nominal size',
    limit: true,
  },
]);

import { checks } from '../../core/checks';
import { metalMargin } from './margin';

export default checks(metalMargin, [
  {
    given: { stress: '100 MPa', metal: 'P20' },
    expect: 8.3,
    within: 1e-12,
    from: 'by hand: 830 MPa, as METAL.VALUE tells it of P20, over 100 MPa',
  },
  {
    given: { stress: '20 ksi', metal: '6061-T6' },
    expect: 2.0015208,
    within: 1e-6,
    from: 'by hand: 276 MPa is 40.0302 ksi; over 20 ksi',
  },
  {
    given: { stress: '503 MPa', metal: '7075-T6' },
    expect: 1,
    within: 1e-12,
    from: 'at the yield itself the margin is 1',
    limit: true,
  },
]);

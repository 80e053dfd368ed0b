import { checks } from '../../core/checks';
import { cutPull } from './pull';

export default checks(cutPull, [
  {
    given: {
      bend: '0.02 mm',
      cutterDia: '6 mm',
      fluteLength: '15 mm',
      neckDia: '5.5 mm',
      neckLength: '25 mm',
      modulus: '580000 MPa',
    },
    expect: '23.5262065024 N',
    within: 1e-10,
    from: 'by hand: 0.02 × 3 × 580000/[(40³ − 15³)/44.918025 + 15³/26.057626]',
  },
  {
    given: {
      bend: '0.0340046322350866 mm',
      cutterDia: '6 mm',
      fluteLength: '15 mm',
      neckDia: '5.5 mm',
      neckLength: '25 mm',
    },
    expect: '40 N',
    within: 1e-12,
    from: 'inverse of CUT.BEND under 40 N',
    limit: true,
  },
]);

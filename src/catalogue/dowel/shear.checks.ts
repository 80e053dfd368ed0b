import { checks } from '../../core/checks';
import { dowelShear } from './shear';

export default checks(dowelShear, [
  {
    given: { pinDia: '6 mm', shearStrength: '400 MPa' },
    expect: '11309.7335529 N',
    within: 1e-9,
    from: 'by hand: 9π × 400',
  },
  {
    given: { pinDia: '0.25 in', shearStrength: '60000 psi', planes: 2 },
    expect: '5890.48622548 lbf',
    within: 1e-9,
    from: 'by hand: 2 × π × 0.25²/4 × 60000',
  },
  {
    given: { pinDia: '2 mm', shearStrength: '1 MPa' },
    expect: '3.14159265359 N',
    within: 1e-10,
    from: 'a section of π mm² at unit stress',
    limit: true,
  },
]);

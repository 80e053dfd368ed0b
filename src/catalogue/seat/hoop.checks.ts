import { checks } from '../../core/checks';
import { seatHoop } from './hoop';

export default checks(seatHoop, [
  {
    given: {
      push: '4 kN',
      draft: '5 deg',
      friction: 0.15,
      seatRadius: '10 mm',
      seatLength: '12 mm',
      blockRadius: '25 mm',
    },
    expect: '30.44371112 MPa',
    within: 1e-8,
    from: 'free body of the flank, then Lamé’s two constants from the pressures at bore and rim, a calculation apart',
  },
  {
    given: {
      push: '900 lbf',
      draft: '8 deg',
      friction: 0.12,
      seatRadius: '0.4 in',
      seatLength: '0.5 in',
      blockRadius: '0.9 in',
    },
    expect: '4033.00188 psi',
    within: 1e-8,
    from: 'free body of the flank, then Lamé’s two constants from the pressures at bore and rim, a calculation apart',
  },
  {
    given: {
      push: '2 kN',
      draft: '26.56505117707799 deg',
      friction: 0,
      seatRadius: '100 mm',
      seatLength: '100 mm',
      blockRadius: '101 mm',
    },
    expect: '6.366197724 MPa',
    within: 0.01,
    from: 'a thin ring: p r/t with p = 2 F/(2π r L), since a frictionless wedge of 1 to 2 doubles the push',
    limit: true,
  },
  {
    given: {
      push: '0 N',
      draft: '5 deg',
      friction: 0.15,
      seatRadius: '10 mm',
      seatLength: '12 mm',
      blockRadius: '25 mm',
    },
    expect: '0 MPa',
    from: 'no push, no stress',
    limit: true,
  },
]);

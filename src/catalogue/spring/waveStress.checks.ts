import { checks } from '../../core/checks';
import { springWaveStress } from './waveStress';

export default checks(springWaveStress, [
  {
    given: {
      force: '50 N',
      outsideDia: '25 mm',
      insideDia: '19 mm',
      thickness: '0.35 mm',
      wavesPerTurn: 3,
    },
    expect: '783.617215 MPa',
    within: 1e-8,
    from: 'by hand: 3π × 50 × 22/(4 × 3 × 0.1225 × 9)',
  },
  {
    given: {
      force: '12 lbf',
      outsideDia: '1 in',
      insideDia: '0.75 in',
      thickness: '0.02 in',
      wavesPerTurn: 3.5,
    },
    expect: '40391.9055 psi',
    within: 1e-8,
    from: 'by hand: 3π × 12 × 0.875/(4 × 0.125 × 0.0004 × 12.25)',
  },
  {
    given: { force: '0 N', outsideDia: '25 mm', insideDia: '19 mm', thickness: '0.35 mm', wavesPerTurn: 3 },
    expect: '0 MPa',
    from: 'no force, no stress',
    limit: true,
  },
]);

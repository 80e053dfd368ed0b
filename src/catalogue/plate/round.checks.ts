import { checks } from '../../core/checks';
import { plateRound } from './round';

export default checks(plateRound, [
  {
    given: { radius: '100 mm', thickness: '10 mm', pressure: '1 MPa', metal: '200 GPa' },
    expect: '0.348 mm',
    within: 0.001,
    from: 'Roark’s coefficient for ν = 0.3, supported: 0.696 p a⁴/(E t³) (from memory)',
    kind: 'memory',
  },
  {
    given: {
      radius: '100 mm',
      thickness: '10 mm',
      pressure: '1 MPa',
      metal: '200 GPa',
      edge: 'clamped',
    },
    expect: '0.0855 mm',
    within: 0.003,
    from: 'Roark’s coefficient for ν = 0.3, clamped: 0.171 p a⁴/(E t³) (from memory)',
    kind: 'memory',
  },
  {
    given: { radius: '20 mm', thickness: '8 mm', pressure: '10 MPa', metal: 'P20' },
    expect: '0.01073523247 mm',
    within: 1e-9,
    from: 'by hand: D = 205000 × 512/(12 × 0.9159) = 9549805, 10 × 160000 × 5.29/(64 × 1.29 × D)',
  },
  {
    given: { radius: '20 mm', thickness: '8 mm', pressure: '0 MPa', metal: 'P20', edge: 'clamped' },
    expect: '0 mm',
    from: 'no pressure, no sag',
    limit: true,
  },
]);

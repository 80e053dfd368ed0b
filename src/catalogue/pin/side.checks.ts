import { checks } from '../../core/checks';
import { pinSide } from './side';

export default checks(pinSide, [
  {
    given: { pressure: '1500 psi', pinDia: '0.125 in', length: '1.25 in', metal: '30 Mpsi', ends: 'free' },
    expect: '0.159154943 in',
    within: 1e-8,
    from: 'by hand: 187.5 × 1.25⁴ × 64/(8 × 30e6 × π × 0.125⁴)',
  },
  {
    given: { pressure: '8 MPa', pinDia: '6 mm', length: '40 mm', metal: '205 GPa', ends: 'seated' },
    expect: '0.0510318 mm',
    within: 4e-4,
    from: 'the beam curve integrated as a polynomial, the prop’s force from no deflection at the tip, a calculation apart',
  },
  {
    given: { pressure: '5 MPa', pinDia: '3 mm', length: '20 mm', metal: 'P20', ends: 'seated' },
    expect: '0.0159474 mm',
    within: 4e-4,
    from: 'Roark’s beam table: 0.0054 w L⁴/(E I), its constant 1/184.6 (from memory)',
    kind: 'memory',
  },
  {
    given: { pressure: '0 MPa', pinDia: '3 mm', length: '20 mm', metal: 'P20' },
    expect: '0 mm',
    from: 'no difference of pressure, no deflection',
    limit: true,
  },
]);

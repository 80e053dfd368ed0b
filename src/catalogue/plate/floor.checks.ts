import { checks } from '../../core/checks';
import { plateFloor } from './floor';

export default checks(plateFloor, [
  {
    given: { length: '100 mm', width: '100 mm', thickness: '10 mm', pressure: '1 MPa', metal: '200 GPa' },
    expect: '0.0221676 mm',
    within: 0.002,
    from: 'Timoshenko’s table, sides alike: 0.00406 p a⁴/D (from memory), D = 200000 × 1000/(12 × 0.91), by hand',
    kind: 'memory',
  },
  {
    given: { length: '150 mm', width: '100 mm', thickness: '10 mm', pressure: '1 MPa', metal: '200 GPa' },
    expect: '0.04217304 mm',
    within: 1e-4,
    from: 'Navier’s double series with 100 × 100 terms, sides 1 to 1.5: 0.0077240 p a⁴/D',
  },
  {
    given: { length: '100 mm', width: '200 mm', thickness: '10 mm', pressure: '1 MPa', metal: '200 GPa' },
    expect: '0.0553098 mm',
    within: 0.002,
    from: 'Timoshenko’s table, sides 1 to 2, given either way round: 0.01013 p a⁴/D (from memory)',
    kind: 'memory',
  },
  {
    given: { length: '10 m', width: '100 mm', thickness: '10 mm', pressure: '1 MPa', metal: '200 GPa' },
    expect: '0.07109375 mm',
    within: 1e-9,
    from: 'a long plate is a strip on two supports, 5/384 p a⁴/D',
    limit: true,
  },
]);

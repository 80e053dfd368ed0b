import { checks } from '../../core/checks';
import { metalValue } from './value';

export default checks(metalValue, [
  {
    given: { metal: 'P20', property: 'modulus' },
    expect: '205 GPa',
    within: 1e-12,
    from: 'P20 data sheets at three pages, named by SHOW.SOURCE',
    kind: 'secondhand',
  },
  {
    given: { metal: '6061-T6', property: 'expansion' },
    expect: '0.0000236 1/°C',
    within: 1e-12,
    from: 'handbook value (from memory)',
    kind: 'memory',
  },
  {
    given: { metal: '7075', property: 'yield' },
    expect: '503 MPa',
    within: 1e-12,
    from: 'handbook value (from memory)',
    kind: 'memory',
  },
]);

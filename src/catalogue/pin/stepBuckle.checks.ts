import { checks } from '../../core/checks';
import { pinStepBuckle } from './stepBuckle';

export default checks(pinStepBuckle, [
  {
    given: { shankDia: '0.25 in', shankLength: '3 in', tipDia: '0.125 in', tipLength: '1.5 in' },
    expect: '502.205928493 lbf',
    within: 1e-6,
    from: 'beam finite elements, 120 of them, with geometric stiffness, a calculation apart',
  },
  {
    given: { shankDia: '8 mm', shankLength: '20 mm', tipDia: '2 mm', tipLength: '100 mm' },
    expect: '114.474447542 N',
    within: 1e-6,
    from: 'beam finite elements, 120 of them, with geometric stiffness, a calculation apart',
  },
  {
    given: {
      shankDia: '6 mm',
      shankLength: '90 mm',
      tipDia: '6 mm',
      tipLength: '30 mm',
      modulus: '210 GPa',
    },
    expect: '9156.54108215 N',
    within: 1e-9,
    from: 'equal diameters: Euler’s π³ E d⁴/(64 L²) by hand',
    limit: true,
  },
  {
    given: {
      shankDia: '6 mm',
      shankLength: '60 mm',
      tipDia: '6 mm',
      tipLength: '60 mm',
      modulus: '210 GPa',
    },
    expect: '9156.54108215 N',
    within: 1e-9,
    from: 'equal halves, where the printed form has its poles: Euler’s load again',
    limit: true,
  },
]);

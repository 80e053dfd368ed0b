import { checks } from '../../core/checks';
import { edgeCenter } from './center';

export default checks(edgeCenter, [
  {
    given: { reading: '10.5 mm', tipDia: '6 mm', side: 'left' },
    expect: '13.5 mm',
    within: 1e-12,
    from: 'by hand: 10.5 + 3',
  },
  {
    given: { reading: '1.234 in', tipDia: '0.2 in', side: 'right' },
    expect: '1.134 in',
    within: 1e-12,
    from: 'by hand: 1.234 − 0.1',
  },
  {
    given: { reading: '-0.1 in', tipDia: '0.2 in', side: 'front' },
    expect: '0 in',
    from: 'read half the tip before zero, the edge is at zero',
    limit: true,
  },
  {
    given: { reading: '0.1 in', tipDia: '0.2 in', side: 'back' },
    expect: '0 in',
    from: 'read half the tip beyond zero, the edge is at zero',
    limit: true,
  },
]);

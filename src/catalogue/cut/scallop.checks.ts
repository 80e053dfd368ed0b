import { checks } from '../../core/checks';
import { cutScallop } from './scallop';

export default checks(cutScallop, [
  {
    given: { ballDia: '8 mm', stepover: '0.4 mm', slope: '30 deg' },
    expect: '0.00667223150082 mm',
    within: 1e-11,
    from: 'by hand: 4 − √(16 − (0.2/0.8660254)²)',
  },
  {
    given: { ballDia: '10 mm', stepover: '6 mm' },
    expect: '1 mm',
    within: 1e-12,
    from: 'by hand: 3-4-5 triangle, 5 − √(5² − 3²) = 1',
  },
  {
    given: { ballDia: '10 mm', stepover: '10 mm' },
    expect: '5 mm',
    within: 1e-12,
    from: 'passes a diameter apart leave a scallop as high as the radius',
    limit: true,
  },
]);

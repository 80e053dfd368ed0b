import { checks } from '../../core/checks';
import { cutStepover } from './stepover';

export default checks(cutStepover, [
  {
    given: { ballDia: '8 mm', scallop: '0.004 mm', slope: '30 deg' },
    expect: '0.309761198345 mm',
    within: 1e-11,
    from: 'by hand: 2 √(0.004 × 7.996) × 0.8660254',
  },
  {
    given: { ballDia: '10 mm', scallop: '1 mm' },
    expect: '6 mm',
    within: 1e-12,
    from: 'inverse of CUT.SCALLOP in a 3-4-5 triangle',
    limit: true,
  },
  {
    given: { ballDia: '10 mm', scallop: '5 mm' },
    expect: '10 mm',
    within: 1e-12,
    from: 'a scallop as high as the radius: passes a diameter apart',
    limit: true,
  },
]);

import { checks } from '../../core/checks';
import { cutWallStep } from './wallStep';

export default checks(cutWallStep, [
  {
    given: { scallop: '0.003 mm', draft: '2 deg' },
    expect: '0.0859611250435 mm',
    within: 1e-11,
    from: 'by hand: 0.003/0.0348994967',
  },
  {
    given: { scallop: '0.01 mm', draft: '30 deg' },
    expect: '0.02 mm',
    within: 1e-12,
    from: 'by hand: sin 30° = 1/2',
  },
  {
    given: { scallop: '0.01 mm', draft: '90 deg' },
    expect: '0.01 mm',
    within: 1e-12,
    from: 'on a wall laid flat the scallop is as high as its step',
    limit: true,
  },
]);

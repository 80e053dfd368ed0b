import { checks } from '../../core/checks';
import { cutRpm } from './rpm';

export default checks(cutRpm, [
  {
    given: { speed: '90 m/min', diameter: '8 mm' },
    expect: '3580.98621957 rpm',
    within: 1e-11,
    from: 'by hand: 90000/(8 π)',
  },
  {
    given: { speed: '200 ft/min', diameter: '0.5 in' },
    expect: '1528 rpm',
    within: 2e-4,
    from: 'shop rule 3.82 × ft/min over inches (common practice)',
    kind: 'practice',
  },
  {
    given: { speed: '300 m/min', diameter: '3 mm', limit: '10000 rpm' },
    expect: '10000 rpm',
    within: 1e-12,
    from: 'the spindle’s limit holds where the speed asks for more',
    limit: true,
  },
]);

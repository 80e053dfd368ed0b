import { checks } from '../../core/checks';
import { pinFlash } from './flash';

export default checks(pinFlash, [
  {
    given: { radialGap: '0.008 mm', resin: 'PP' },
    expect: '0.0047 mm',
    within: 1e-9,
    from: 'vent depth of PP 0.0127 mm (0.0005 in) in the table of vent depths at viewmold.com, less 0.008',
    kind: 'secondhand',
  },
  {
    given: { radialGap: '0.0006 in', resin: 'ABS' },
    expect: '0.0004 in',
    within: 1e-9,
    from: 'vent depth of ABS 0.0254 mm (0.001 in) in the table of vent depths at viewmold.com, less 0.0006 in',
    kind: 'secondhand',
  },
  {
    given: { radialGap: '0.02 mm', resin: '0.015 mm' },
    expect: '-0.005 mm',
    within: 1e-9,
    from: 'by hand: 0.015 − 0.02',
  },
  {
    given: { radialGap: '0 mm', resin: '0.015 mm' },
    expect: '0.015 mm',
    within: 1e-12,
    from: 'without a gap all of the vent depth is spare',
    limit: true,
  },
]);

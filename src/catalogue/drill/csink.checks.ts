import { checks } from '../../core/checks';
import { drillCsink } from './csink';

export default checks(drillCsink, [
  {
    given: { sinkDia: '12.5 mm', holeDia: '6.4 mm', angle: '90 deg' },
    expect: '3.05 mm',
    within: 1e-12,
    from: 'by hand: at 90° half the difference',
  },
  {
    given: { sinkDia: '10 mm', holeDia: '5.5 mm' },
    expect: '2.58832891625 mm',
    within: 1e-10,
    from: 'by hand: 4.5/(2 tan 41°), tan 41° = 0.86928674',
  },
  {
    given: { sinkDia: '6 mm', holeDia: '6 mm', angle: '90 deg' },
    expect: '0 mm',
    within: 1e-12,
    from: 'equal diameters leave no countersink',
    limit: true,
  },
]);

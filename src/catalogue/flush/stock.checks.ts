import { checks } from '../../core/checks';
import { flushStock } from './stock';

export default checks(flushStock, [
  {
    given: {
      seatWidthTol: '0.01 mm',
      draft: '5 deg',
      cutoffTol: '0.02 mm',
      touchTol: '0.01 mm',
      bedding: '0.003 mm',
      minimumCut: '0.05 mm',
    },
    expect: '0.140150261514 mm',
    within: 1e-9,
    from: 'by hand: 0.01/(2 × 0.0874886635) + 0.02 + 0.01 + 0.003 + 0.05',
  },
  {
    given: {
      seatWidthTol: '0.0005 in',
      draft: '5 deg',
      cutoffTol: '0.001 in',
      touchTol: '0.0008 in',
      bedding: '0.0002 in',
      minimumCut: '0.002 in',
      method: 'rss',
    },
    expect: '0.0053313544957 in',
    within: 1e-9,
    from: 'by hand: √(0.00285751² + 0.001² + 0.0008²) + 0.0022',
  },
  {
    given: {
      seatWidthTol: '0.01 mm',
      draft: '5 deg',
      cutoffTol: '0.02 mm',
      touchTol: '0.01 mm',
      bedding: '0.003 mm',
      minimumCut: '0.05 mm',
      sink: '0.035 mm',
    },
    expect: '0.175150261514 mm',
    within: 1e-9,
    from: 'by hand: the first with 0.035 of sink on top',
  },
  {
    given: { seatWidthTol: '0 mm', draft: '5 deg', cutoffTol: '0 mm', touchTol: '0 mm' },
    expect: '0.002 in',
    within: 1e-12,
    from: 'without tolerances only the least cut is left',
    limit: true,
  },
]);

import { checks } from '../../core/checks';
import { seatHeatDrop } from './heatDrop';

export default checks(seatHeatDrop, [
  {
    given: {
      width: '30 mm',
      draft: '5 deg',
      insertMetal: '0.0000128 1/°C',
      insertRise: '60 °C',
      blockMetal: '0.0000236 1/°C',
      blockRise: '40 °C',
    },
    expect: '-0.03017533 mm',
    within: 1e-6,
    from: 'by hand: 30 × (0.000768 − 0.000944)/(2 × 0.08748866)',
  },
  {
    given: {
      width: '40 mm',
      draft: '3 deg',
      insertMetal: 'P20',
      insertRise: '45 °C',
      blockMetal: 'P20',
      blockRise: '45 °C',
    },
    expect: '0 mm',
    from: 'one metal at one temperature keeps its fit',
    limit: true,
  },
]);

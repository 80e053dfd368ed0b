import { checks } from '../../core/checks';
import { pinStand } from './stand';

export default checks(pinStand, [
  {
    given: {
      pinLength: '70 mm',
      stack: '70 mm',
      plateMetal: '6061-T6',
      plateRise: '35 °C',
      pinMetal: 'H13',
      pinRise: '25 °C',
    },
    expect: '-0.03857 mm',
    within: 1e-9,
    from: 'by hand: 70 × (11e-6 × 25 − 23.6e-6 × 35)',
  },
  {
    given: {
      pinLength: '3.201 in',
      stack: '3.2 in',
      plateMetal: '7075-T6',
      plateRise: '60 °F',
      pinMetal: 'H13',
      pinRise: '45 °F',
    },
    expect: '-0.000615725 in',
    within: 1e-9,
    from: 'by hand: 0.001 + 3.201 × 11e-6 × 25 − 3.2 × 23.4e-6 × 60/1.8',
  },
  {
    given: {
      pinLength: '85.07216618515889 mm',
      stack: '85 mm',
      plateMetal: '23.6e-6 1/°C',
      plateRise: '40 °C',
      pinMetal: '11e-6 1/°C',
      pinRise: '30 °C',
    },
    expect: '0.02 mm',
    within: 1e-9,
    from: 'inverse of PIN.LENGTH: 85.10024/1.00033 stands 0.02 mm proud of 85 mm',
    limit: true,
  },
  {
    given: {
      pinLength: '70.05 mm',
      stack: '70 mm',
      plateMetal: 'P20',
      plateRise: '30 °C',
      pinMetal: 'P20',
      pinRise: '0 °C',
    },
    expect: '0.02312 mm',
    within: 1e-9,
    from: 'a cold pin loses just what the plates grow: 0.05 − 70 × 12.8e-6 × 30',
    limit: true,
  },
]);

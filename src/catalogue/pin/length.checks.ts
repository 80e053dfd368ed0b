import { checks } from '../../core/checks';
import { pinLength } from './length';

export default checks(pinLength, [
  {
    given: {
      stack: '85 mm',
      proud: '0.02 mm',
      plateMetal: '23.6e-6 1/°C',
      plateRise: '40 °C',
      pinMetal: '11e-6 1/°C',
      pinRise: '30 °C',
    },
    expect: '85.07216619 mm',
    within: 1e-9,
    from: 'by hand: (85 × 1.000944 + 0.02)/1.00033 = 85.10024/1.00033',
  },
  {
    given: {
      stack: '3.2 in',
      proud: '0.001 in',
      plateMetal: '6061-T6',
      plateRise: '60 °F',
      pinMetal: 'H13',
      pinRise: '45 °F',
    },
    expect: '3.20263660827 in',
    within: 1e-10,
    from: 'by hand: (3.2 × (1 + 23.6e-6 × 60/1.8) + 0.001)/(1 + 11e-6 × 45/1.8)',
  },
  {
    given: {
      stack: '70 mm',
      proud: '0 mm',
      plateMetal: 'P20',
      plateRise: '0 °C',
      pinMetal: 'H13',
      pinRise: '0 °C',
    },
    expect: '70 mm',
    within: 1e-12,
    from: 'a cold mold wants the length of the stack',
    limit: true,
  },
]);

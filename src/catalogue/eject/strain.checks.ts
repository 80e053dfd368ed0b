import { checks } from '../../core/checks';
import { ejectStrain } from './strain';

export default checks(ejectStrain, [
  {
    given: { expansion: '9e-5 1/°C', solidifyTemp: '115 °C', ejectTemp: '85 °C' },
    expect: 0.0027,
    within: 1e-9,
    from: 'by hand: 90e-6 × (115 − 85)',
  },
  {
    given: { expansion: '9e-5 1/°C', solidifyTemp: '239 °F', ejectTemp: '185 °F' },
    expect: 0.0027,
    within: 1e-9,
    from: 'the same in Fahrenheit: 239 °F is 115 °C, 185 °F is 85 °C',
  },
  {
    given: { expansion: '5e-5 1/°F', solidifyTemp: '300 °F', ejectTemp: '180 °F', limit: '0.5 %' },
    expect: 0.005,
    within: 1e-12,
    from: 'by hand: 5e-5 × 120 = 0.006 is above the limit of 0.005',
    limit: true,
  },
  {
    given: { expansion: '9e-5 1/°C', solidifyTemp: '90 °C', ejectTemp: '90 °C' },
    expect: 0,
    from: 'ejected as it sets, nothing has shrunk yet',
    limit: true,
  },
]);

import { checks } from '../../core/checks';
import { fillViscosity } from './viscosity';

/** Constants of a melt, our own invention. */
const melt = {
  D1: '4e14 Pa·s',
  D2: '263.15 K',
  A1: 33,
  A2: '51.6 K',
  tauStar: '25000 Pa',
  powerIndex: 0.28,
} as const;

export default checks(fillViscosity, [
  {
    given: { ...melt, shearRate: '800 1/s', temp: '230 °C' },
    expect: '65.362132765 Pa·s',
    within: 1e-9,
    from: 'by hand: η₀ = 4e14 e^(−33 × 240/291.6) = 640.33523, 640.33523/(1 + (640.33523 × 800/25000)^0.72)',
  },
  {
    given: { ...melt, shearRate: '0 1/s', temp: '-10 °C' },
    expect: '4e14 Pa·s',
    within: 1e-12,
    from: 'at rest and at the glass temperature the viscosity is D1',
    limit: true,
  },
  {
    given: {
      shearRate: '50 1/s',
      temp: '100 °C',
      D1: '500 Pa·s',
      D2: '373.15 K',
      A1: 30,
      A2: '51.6 K',
      tauStar: '25000 Pa',
      powerIndex: 0.3,
    },
    expect: '250 Pa·s',
    within: 1e-12,
    from: 'where η₀ γ̇ = τ* the viscosity is half of η₀, whatever the index',
    limit: true,
  },
]);

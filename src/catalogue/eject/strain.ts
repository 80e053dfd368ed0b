import { derived, formula, input } from '../../core/define';

export const ejectStrain = formula({
  name: 'EJECT.STRAIN',
  summary: 'Thermal strain with which a part grips its core, capped at a limit.',
  inputs: [
    input('expansion', 'alpha_T', 'expansion', {
      above: '0 1/°C',
      usual: ['5e-6 1/°C', '0.0004 1/°C'],
      says: 'Coefficient of expansion of the resin',
    }),
    input('solidifyTemp', 'T_s', 'temperature', {
      usual: ['30 °C', '350 °C'],
      says: 'Temperature at which the wall has set and begins to shrink onto the core',
    }),
    input('ejectTemp', 'T_e', 'temperature', {
      usual: ['10 °C', '250 °C'],
      says: 'Mean temperature of the wall when it is ejected',
    }),
    input('limit', 'epsilon_m', 'ratio', {
      min: 0,
      max: 0.2,
      usual: [0.0005, 0.04],
      optional: true,
      says: 'Most that the strain can be: the mold shrinkage of the resin',
    }),
  ],
  refuse: [
    {
      when: 'T_e > T_s',
      argument: 'ejectTemp',
      says: 'must not be above {solidifyTemp}: the part has not set yet',
    },
  ],
  steps: {
    epsilon_T: {
      gives: 'ratio',
      expr: 'alpha_T*(T_s - T_e)',
      says: 'Free contraction from setting to ejection',
    },
    epsilon: {
      gives: 'ratio',
      expr: 'given(epsilon_m) ? min(epsilon_T, epsilon_m) : epsilon_T',
      says: 'A part cannot grip by more than it would have shrunk',
    },
  },
  result: 'epsilon',
  sources: [derived('Linear expansion, with the contraction held back by the core')],
  notes: [
    'Crystalline resins shrink more on setting than their coefficient of expansion tells: give their mold shrinkage as limit, and take the larger of both for a careful answer.',
    'Ejecting hotter lowers the strain, and with it the grip; colder raises both strain and modulus.',
  ],
  related: ['EJECT.GRIP', 'RESIN.VALUE', 'SHRINK.PART'],
  checks: [
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
  ],
});

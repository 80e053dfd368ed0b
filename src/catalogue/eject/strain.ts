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
});

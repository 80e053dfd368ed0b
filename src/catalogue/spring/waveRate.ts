import { formula, input } from '../../core/define';
import { WAVE_SOURCE } from '../../tables/springs';
import { ring, ringHasBreadth, springModulus, STORED_ENERGY } from './inputs';
import { WAVE_FACTOR, waveIsUsual, waveRing, wavesPerTurn } from './wave';

export const springWaveRate = formula({
  name: 'SPRING.WAVERATE',
  summary: 'Rate of a crest-to-crest wave spring.',
  inputs: [
    ...ring,
    wavesPerTurn,
    input('turns', 'Z', 'ratio', {
      above: 0,
      usual: [1, 25],
      says: 'Active turns; flat shim turns at the ends do not count',
    }),
    springModulus,
  ],
  refuse: [ringHasBreadth],
  steps: {
    ...waveRing,
    K: { gives: 'ratio', expr: WAVE_FACTOR, says: 'Factor of the number of waves, from the table' },
    k: {
      gives: 'stiffness',
      expr: 'E*b*t^3*N^4/(K*D_m^3*Z)*(D_e/D_i)',
      says: 'Each wave a short beam, the turns in series',
    },
  },
  result: 'k',
  valid: [
    ...waveIsUsual,
    { holds: 'Z >= 2 and Z <= 20', says: 'Crest-to-crest springs have 2 to 20 turns.' },
  ],
  sources: [WAVE_SOURCE],
  notes: [
    'N is waves in one turn, Z the turns: some makers use the two letters the other way round.',
    'The factor steps where the number of waves does: from 4 to 4.5 waves the rate gains 34 % more than the waves account for. Expect ± 10 to 20 %.',
    'Use 30 to 70 % of the travel: softer before it, stiffer after.',
  ],
  cautions: [{ says: STORED_ENERGY }],
  related: ['SPRING.WAVESTRESS', 'SPRING.RATE'],
});

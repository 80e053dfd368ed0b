import { derived, formula } from '../../core/define';
import { WAVE_SOURCE } from '../../tables/springs';
import { force, ring, ringHasBreadth, STORED_ENERGY } from './inputs';
import { waveIsUsual, waveRing, wavesPerTurn } from './wave';

export const springWaveStress = formula({
  name: 'SPRING.WAVESTRESS',
  summary: 'Bending stress in a crest-to-crest wave spring.',
  inputs: [force, ...ring, wavesPerTurn],
  refuse: [ringHasBreadth],
  steps: {
    ...waveRing,
    sigma: {
      gives: 'pressure',
      expr: '3*pi*F*D_m/(4*b*t^2*N^2)',
      says: 'Each wave a beam clamped at its crests',
    },
  },
  result: 'sigma',
  valid: waveIsUsual,
  sources: [
    WAVE_SOURCE,
    derived(
      'Beam of one wavelength π D_m/N, clamped at both ends, with F/N in the middle: M = F π D_m/(8 N²)',
    ),
  ],
  notes: [
    'Compare with the tensile strength of the strip: static use stays below it, many cycles below about half of it.',
  ],
  cautions: [{ says: STORED_ENERGY }],
  related: ['SPRING.WAVERATE'],
});

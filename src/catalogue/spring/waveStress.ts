import { derived, formula } from '../../core/define';
import { WAVE_SOURCE } from '../../tables/springs';
import { force, ring, ringHasBreadth } from './inputs';
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
  related: ['SPRING.WAVERATE'],
  checks: [
    {
      given: {
        force: '50 N',
        outsideDia: '25 mm',
        insideDia: '19 mm',
        thickness: '0.35 mm',
        wavesPerTurn: 3,
      },
      expect: '783.617215 MPa',
      within: 1e-8,
      from: 'by hand: 3π × 50 × 22/(4 × 3 × 0.1225 × 9)',
    },
    {
      given: {
        force: '12 lbf',
        outsideDia: '1 in',
        insideDia: '0.75 in',
        thickness: '0.02 in',
        wavesPerTurn: 3.5,
      },
      expect: '40391.9055 psi',
      within: 1e-8,
      from: 'by hand: 3π × 12 × 0.875/(4 × 0.125 × 0.0004 × 12.25)',
    },
    {
      given: { force: '0 N', outsideDia: '25 mm', insideDia: '19 mm', thickness: '0.35 mm', wavesPerTurn: 3 },
      expect: '0 MPa',
      from: 'no force, no stress',
      limit: true,
    },
  ],
});

import { derived, formula, fromMemory, input } from '../../core/define';
import { CLAMP_CAUTION, clampForceInput } from './inputs';

export const clampGap = formula({
  name: 'CLAMP.GAP',
  summary: 'Gap that opens at the parting line of an elastic clamp; 0 while it holds.',
  inputs: [
    clampForceInput,
    input('openingForce', 'F_o', 'force', {
      min: '0 N',
      usual: ['50 N', '2000 kN'],
      says: 'Force of the melt that opens the mold: pressure times projected area',
    }),
    input('clampStiffness', 'k_c', 'stiffness', {
      above: '0 N/mm',
      usual: ['0.5 kN/mm', '5000 kN/mm'],
      says: 'Stiffness of what clamps: screws, tie bars, frame',
    }),
    input('moldStiffness', 'k_m', 'stiffness', {
      above: '0 N/mm',
      optional: true,
      usual: ['5 kN/mm', '50000 kN/mm'],
      says: 'Stiffness of the mold that it squeezes; left out: as stiff as can be',
    }),
  ],
  steps: {
    F_s: {
      gives: 'force',
      expr: 'given(k_m) ? F*(1 + k_c/k_m) : F',
      says: 'Opening force at which the faces part: the clamp force, and what the squeezed mold gives back',
    },
    g: {
      gives: 'length',
      expr: 'max(0, F_o - F_s)/k_c',
      says: 'Beyond it the clamp alone stretches',
    },
  },
  result: 'g',
  sources: [
    derived('Two springs, the clamp’s and the mold’s, of which the mold’s cannot pull'),
    fromMemory('Shigley’s Mechanical Engineering Design, chapter 8: bolted-joint diagram'),
  ],
  notes: [
    'Compare the gap with the vent depth of the resin, FILL.VENT: beyond it the mold flashes, and from there on the melt spreads and opens it further.',
    'The stiffness of a press is measured: clamp force over the stretch of its tie bars, read with a dial gauge.',
  ],
  cautions: [
    {
      when: 'g > 0',
      says: 'The mold opens: it flashes and may spray hot melt at the parting line. Do not run it.',
    },
    { says: CLAMP_CAUTION },
  ],
  related: ['CLAMP.SPARE', 'CLAMP.FORCE', 'FILL.VENT', 'PLATE.SAG'],
});

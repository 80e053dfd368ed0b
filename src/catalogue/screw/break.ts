import { procedure } from '../../core/define';
import { strengthOf } from '../../tables/fasteners';
import { stressArea } from '../../tables/threads';
import { thread } from '../threads';
import { CLASS_SOURCES, classOfItsSystem, strengthClass, stressed } from './inputs';

export const screwBreak = procedure({
  name: 'SCREW.BREAK',
  summary: 'Tensile load that breaks a screw of a strength class.',
  inputs: [thread, strengthClass],
  gives: 'force',
  method: 'Tensile strength of the class on the tensile stress area: R_m A_s.',
  steps: {
    R_m: {
      gives: 'pressure',
      says: 'Tensile strength of the class for this size',
      equation: 'table of the standard',
    },
    A_s: stressed,
  },
  run: ({ thread: t, strengthClass: of }, show) => {
    const { tensile } = strengthOf(of, t.major);
    const area = stressArea(t);
    show('R_m', tensile);
    show('A_s', area);
    return tensile * area;
  },
  valid: [classOfItsSystem],
  sources: CLASS_SOURCES,
  notes: [
    'A capacity: for a margin divide by your load.',
    'The standards’ load tables round the stress area to three digits and the loads with it, by up to 0.7 %.',
  ],
  cautions: [
    {
      says:
        'The least load at which a screw may break, pulled straight and slowly: never one to work at. ' +
        'For what holds a plate under pressure stay below half of the proof load on top of the preload, and follow the press maker’s manual.',
    },
  ],
  related: ['SCREW.CLASSLOAD', 'THREAD.ENGAGE', 'THREAD.STRIP'],
});

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
  checks: [
    {
      given: { thread: 'M8', strengthClass: '8.8' },
      expect: '29200 N',
      within: 0.007,
      from: 'ISO 898-1 tensile load of M8 8.8 (slsbearings.com, usefastener.com): 29200 N',
    },
    {
      given: { thread: 'M20', strengthClass: '10.9' },
      expect: '255 kN',
      within: 0.007,
      from: 'ISO 898-1 tensile load of M20 10.9 (slsbearings.com, usefastener.com): 255 kN',
    },
    {
      given: { thread: '1/4-20', strengthClass: 'A574' },
      expect: '5727.8262 lbf',
      within: 1e-7,
      from: 'ASTM A574 (stsindustrial.com), by hand: 180000 × 0.0318212567',
    },
    {
      given: { thread: 'M6', strengthClass: '12.9' },
      expect: '24550 N',
      within: 1e-4,
      from: 'as the proof load of the class, taken 1220/970 times: 1220 × 20.123 mm² (Bickford; engineersedge.com)',
      limit: true,
    },
  ],
});

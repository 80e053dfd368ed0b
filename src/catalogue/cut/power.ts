import { formula } from '../../core/define';
import { KIENZLE_SOURCE } from '../../tables/cutting';
import { cutMetal, specificForce } from '../workMaterials';
import { axialDepth, chipInRange, chipThickness, feedRate, radialDepth } from './inputs';

export const cutPower = formula({
  name: 'CUT.POWER',
  summary: 'Power at the cutter in milling.',
  inputs: [radialDepth, axialDepth, feedRate, cutMetal, chipThickness],
  steps: {
    ...specificForce,
    Q: { gives: 'flow', expr: 'a_e*a_p*v_f', says: 'Metal removed in a second' },
    P: { gives: 'power', expr: 'k_c*Q', says: 'Work for the volume removed' },
  },
  result: 'P',
  valid: [chipInRange],
  sources: [KIENZLE_SOURCE],
  notes: [
    'At the cutter: the drive must make a quarter more for its losses (common practice), and a small spindle has its power only near its top speed.',
  ],
  related: ['CUT.FORCE', 'CUT.CHIP', 'CUT.FEED'],
  checks: [
    {
      given: {
        radialDepth: '2 mm',
        axialDepth: '4 mm',
        feedRate: '500 mm/min',
        metal: '6061-T6',
        chipThickness: '0.04 mm',
      },
      expect: '0.1192569588 kW',
      within: 1e-9,
      from: 'VDI 3323 group 22 (kc1.1 800 MPa, mc 0.25), by hand: 2 × 4 × 500 × 800 × 0.04^−0.25/60e6',
    },
    {
      given: {
        radialDepth: '2 mm',
        axialDepth: '3 mm',
        feedRate: '600 mm/min',
        metal: '1000 MPa',
        chipThickness: '0.04 mm',
      },
      expect: '60 W',
      within: 1e-12,
      from: 'by hand: 60 mm³ a second at 1000 MPa, that is 1 J/mm³',
      limit: true,
    },
  ],
});

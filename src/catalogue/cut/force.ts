import { formula, input } from '../../core/define';
import { KIENZLE_SOURCE } from '../../tables/cutting';
import { cutMetal, specificForce } from '../workMaterials';
import { chipInRange, chipThickness } from './inputs';

export const cutForce = formula({
  name: 'CUT.FORCE',
  summary: 'Cutting force of one edge on a chip.',
  inputs: [
    chipThickness,
    input('chipWidth', 'b', 'length', {
      above: '0 mm',
      usual: ['0.01 mm', '60 mm'],
      says: 'Width of the chip: for a straight edge the depth of cut along it',
    }),
    cutMetal,
  ],
  steps: {
    ...specificForce,
    F: { gives: 'force', expr: 'k_c*b*h', says: 'On the section of the chip' },
  },
  result: 'F',
  valid: [chipInRange],
  sources: [KIENZLE_SOURCE],
  notes: [
    'For a sharp edge; a worn one takes about a third more (common practice) and pushes harder sideways. The force that bends the cutter is of this size; with several edges ' +
      'engaged at once take their sum.',
    'A metal given as a number is the specific cutting force itself, at the chip that is cut.',
  ],
  related: ['CUT.BEND', 'CUT.PULL', 'CUT.POWER', 'CUT.CHIP'],
  checks: [
    {
      given: { chipThickness: '0.05 mm', chipWidth: '3 mm', metal: '6061-T6' },
      expect: '253.7691032 N',
      within: 1e-9,
      from: 'VDI 3323 group 22 (kc1.1 800 MPa, mc 0.25), by hand: 800 × 0.05^−0.25 × 0.15',
    },
    {
      given: { chipThickness: '0.04 mm', chipWidth: '4 mm', metal: 'P20' },
      expect: '580.2837328 N',
      within: 1e-9,
      from: 'VDI 3323 group 7 (kc1.1 1675 MPa, mc 0.24), by hand: 1675 × 0.04^−0.24 × 0.16',
    },
    {
      given: { chipThickness: '1 mm', chipWidth: '1 mm', metal: 'H13 annealed' },
      expect: '2450 N',
      within: 1e-12,
      from: 'VDI 3323 group 10: at a chip of 1 mm by 1 mm the force is kc1.1 itself',
      limit: true,
    },
    {
      given: { chipThickness: '0.1 mm', chipWidth: '2 mm', metal: '2000 MPa' },
      expect: '400 N',
      within: 1e-12,
      from: 'by hand: a given specific force of 2000 MPa on 0.2 mm²',
    },
  ],
});

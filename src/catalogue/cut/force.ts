import { formula, input } from '../../core/define';
import { KIENZLE_SOURCE } from '../../tables/cutting';
import { cutMetal, specificForce } from '../workMaterials';
import { chipInRange, chipLimits, chipThickness, WORK_HOLDING } from './inputs';

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
  constants: chipLimits,
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
  cautions: [{ says: WORK_HOLDING }],
  related: ['CUT.BEND', 'CUT.PULL', 'CUT.POWER', 'CUT.CHIP'],
});

import { derived, formula, input } from '../../core/define';
import { pinDia } from './inputs';

export const dowelShear = formula({
  name: 'DOWEL.SHEAR',
  summary: 'Load at which a dowel shears.',
  inputs: [
    pinDia,
    input('shearStrength', 'tau', 'pressure', {
      above: '0 MPa',
      usual: ['50 MPa', '1500 MPa'],
      says: 'Shear strength of the pin: about 0.6 of its tensile strength',
    }),
    input('planes', 'n', 'count', {
      usual: [1, 2],
      min: 1,
      max: 10,
      default: 1,
      says: 'Planes in which it must shear',
    }),
  ],
  steps: {
    A: { gives: 'area', expr: 'pi*d^2/4', says: 'Section of the pin' },
    F: { gives: 'force', expr: 'n*A*tau', says: 'Shear strength over all planes' },
  },
  result: 'F',
  sources: [derived('Mean shear stress over the section')],
  notes: ['A capacity: for a margin divide by your load.'],
  cautions: [
    {
      says: 'This is where it breaks: divide by a margin. A soft plate gives way at the hole’s edge before a hard pin shears.',
    },
  ],
  related: ['DOWEL.PRESS'],
});

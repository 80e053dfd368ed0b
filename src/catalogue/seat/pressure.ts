import { derived, formula, input } from '../../core/define';
import { draft, FREE_BODY, friction, normalForce, push } from './inputs';

export const seatPressure = formula({
  name: 'SEAT.PRESSURE',
  summary: 'Mean contact pressure on the flanks of a tapered seat.',
  inputs: [
    push,
    draft,
    friction,
    input('contactArea', 'A', 'area', {
      above: '0 mm²',
      usual: ['5 mm²', '0.1 m²'],
      says: 'Area of the flanks that bear, all together, measured on the slope',
    }),
  ],
  steps: {
    ...normalForce,
    p: { gives: 'pressure', expr: 'N/A', says: 'Spread evenly over the flanks' },
  },
  result: 'p',
  sources: [derived(FREE_BODY)],
  notes: [
    'A cone of mean radius r and axial length L has flanks of 2π r L/cos α. An angle error bears at one end and multiplies this pressure there.',
  ],
  cautions: [
    {
      says: 'Compare it with the yield strength of the softer metal and stay well below: a seat that yields sinks for good and galls.',
    },
  ],
  related: ['SEAT.FORCE', 'SEAT.SPREAD', 'METAL.VALUE'],
});

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
  checks: [
    {
      given: { push: '2 kN', draft: '5 deg', friction: 0.15, contactArea: '750 mm²' },
      expect: '11.2714976 MPa',
      within: 1e-8,
      from: 'by hand: 2000/(0.08715574 + 0.15 × 0.99619470)/750',
    },
    {
      given: { push: '450 lbf', draft: '6 deg', friction: 0.12, contactArea: '1.2 in²' },
      expect: '1675.07113 psi',
      within: 1e-8,
      from: 'by hand: 450/(0.10452846 + 0.12 × 0.99452190)/1.2',
    },
    {
      given: { push: '1 kN', draft: '30 deg', friction: 0, contactArea: '100 mm²' },
      expect: '20 MPa',
      within: 1e-12,
      from: 'without friction N = F/sin 30° = 2 F',
      limit: true,
    },
  ],
});

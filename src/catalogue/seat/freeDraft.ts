import { derived, formula } from '../../core/define';
import { friction } from './inputs';

export const seatFreeDraft = formula({
  name: 'SEAT.FREEDRAFT',
  summary: 'Smallest draft per side at which a tapered insert lets go by itself.',
  inputs: [friction],
  steps: {
    phi: { gives: 'angle', expr: 'atan(mu)', says: 'The friction angle: a steeper taper slides back' },
  },
  result: 'phi',
  sources: [derived('Free body of the insert after the push: it slides back where tan α > µ')],
  notes: [
    'A seat that is to be pushed out anyway may stay below it; one that must open by itself wants a margin above it.',
  ],
  cautions: [
    {
      says: 'Friction is the least certain number here: take the highest that the pair may reach dry, warm and after a rest.',
    },
  ],
  related: ['SEAT.RELEASE', 'SEAT.FORCE'],
});

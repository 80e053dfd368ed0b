import { derived, formula } from '../../core/define';
import { draft, FREE_BODY, friction, normalForce, push } from './inputs';

export const seatForce = formula({
  name: 'SEAT.FORCE',
  summary: 'Summed normal force between a tapered insert and its seat.',
  inputs: [push, draft, friction],
  steps: { ...normalForce },
  result: 'N',
  sources: [derived(FREE_BODY)],
  notes: ['For two flat flanks each carries half of it; around a cone it is spread over the whole contact.'],
  cautions: [
    {
      when: 'mu >= tan(alpha)',
      says: 'Self-locking: the insert stays seated when the push is gone and must be pushed out.',
    },
    { says: 'A small draft multiplies the push: check what the pocket wall and the clamped plates bear.' },
  ],
  related: ['SEAT.SPREAD', 'SEAT.PRESSURE', 'SEAT.RELEASE', 'SEAT.SINK'],
});

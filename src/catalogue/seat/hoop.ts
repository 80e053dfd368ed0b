import { derived, formula } from '../../core/define';
import {
  blockHoldsSeat,
  blockRadius,
  draft,
  evenContact,
  frictionAngle,
  FREE_BODY,
  friction,
  LAME,
  push,
  roundStress,
  seatLength,
  seatRadius,
} from './inputs';

export const seatHoop = formula({
  name: 'SEAT.HOOP',
  summary: 'Largest hoop stress in the block around a round tapered seat.',
  inputs: [push, draft, friction, seatRadius, seatLength, blockRadius],
  refuse: [blockHoldsSeat],
  steps: {
    ...frictionAngle,
    ...roundStress('F'),
    sigma_t: {
      gives: 'pressure',
      expr: 'p_r*(b^2 + r^2)/(b^2 - r^2)',
      says: 'Lamé’s hoop stress at the bore, a pull around the pocket',
    },
  },
  result: 'sigma_t',
  valid: [evenContact],
  sources: [derived(FREE_BODY), derived(LAME)],
  notes: [
    'For the margin against yield compare von Mises, shown among the steps, not the hoop stress alone: the contact pressure acts at the bore too, and together they are 1.4 times the hoop stress where the block is twice the seat.',
    'SEAT.SINK and SEAT.STEP know the metal and tell the margin themselves.',
  ],
  cautions: [
    {
      says: 'The corners of a pocket, a screw hole beside it or a cooling hole raise the stress two to three times where they stand close: keep them a seat radius away, or count with it.',
    },
    { says: 'A block that splits under injection lets hot melt out: keep well below yield.' },
  ],
  related: ['METAL.MARGIN', 'SEAT.SINK', 'SEAT.SPREAD', 'PLATE.RING'],
});

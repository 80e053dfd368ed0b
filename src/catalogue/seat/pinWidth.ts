import { choice, derived, formula, input } from '../../core/define';
import { draft } from './inputs';

export const seatPinWidth = formula({
  name: 'SEAT.PINWIDTH',
  summary: 'Width of a tapered insert at the plane that it stands on, measured over two gauge pins.',
  inputs: [
    input('overPins', 'M', 'length', {
      above: '0 mm',
      usual: ['3 mm', '400 mm'],
      says: 'Size over two equal pins that lie on the plate, one against each flank',
    }),
    input('pinDia', 'd', 'length', {
      above: '0 mm',
      usual: ['0.5 mm', '25 mm'],
      says: 'Diameter of the pins',
    }),
    draft,
    choice('base', ['small', 'large'], {
      default: 'small',
      says: 'The end that the insert stands on: its narrow one (small) or its wide one (large)',
    }),
  ],
  steps: {
    c: {
      gives: 'length',
      by: 'base',
      cases: {
        small: 'd/2*(1 + tan(alpha) + 1/cos(alpha))',
        large: 'd/2*(1 - tan(alpha) + 1/cos(alpha))',
      },
      says: 'From the corner of the insert at the plate to the far side of a pin',
    },
    w: { gives: 'length', expr: 'M - 2*c', says: 'Less both pins' },
  },
  result: 'w',
  refuse: [
    {
      when: 'w <= 0',
      argument: 'overPins',
      says: 'is no more than the two pins take: there is no insert between them',
    },
  ],
  sources: [derived('A circle that touches the plate and the flank: its centre lies d/2 from both')],
  notes: [
    'Two heights of the pins, on gauge blocks of equal size, give the draft: the sizes over the pins then differ by 2 h tan α.',
  ],
  cautions: [
    { says: 'A burr or a chamfer at the end that stands on the plate lifts the insert: stone it first.' },
  ],
  related: ['SEAT.BALLWIDTH', 'SEAT.HEIGHT'],
});

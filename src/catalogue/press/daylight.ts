import { derived, formula, input } from '../../core/define';

const space = { min: '0 mm', usual: ['0 mm', '1.5 m'] } as const;

export const pressDaylight = formula({
  name: 'PRESS.DAYLIGHT',
  summary: 'Room left to take the part out; negative: it does not come out.',
  inputs: [
    input('opening', 'O', 'length', { ...space, says: 'Largest opening between the platens' }),
    input('stackHeight', 'H', 'length', { ...space, says: 'Height of the mold' }),
    input('partDepth', 'p', 'length', { ...space, says: 'Depth of the part along the opening' }),
    input('lift', 'z', 'length', {
      ...space,
      default: '0 mm',
      says: 'Lift of the ejector or the push-out insert',
    }),
    input('hand', 'h', 'length', { ...space, default: '0 mm', says: 'Room for hand or tool' }),
  ],
  steps: {
    g: { gives: 'length', expr: 'O - H - p - z - h', says: 'The opening less all that must fit in it' },
  },
  result: 'g',
  sources: [derived('Sum of heights')],
  cautions: [
    {
      when: 'g < 0',
      says: 'Negative: the part does not come out. Shorten the stack, or take the mold out of the press to open it.',
    },
    {
      says: 'Hands in the opening only with the clamp locked open and the air off, as the press maker’s manual says.',
    },
  ],
  related: ['SEAT.LIFT', 'SPRING.TRAVEL'],
});

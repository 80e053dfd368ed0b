import { derived, formula, input } from '../../core/define';
import { draft } from './inputs';

export const seatBallWidth = formula({
  name: 'SEAT.BALLWIDTH',
  summary: 'Width of a round tapered pocket at its face, measured with a ball that rests in it.',
  inputs: [
    input('ballDia', 'd', 'length', {
      above: '0 mm',
      usual: ['1 mm', '60 mm'],
      says: 'Diameter of the ball',
    }),
    input('depth', 'h', 'length', {
      usual: ['-30 mm', '100 mm'],
      says: 'From the face down to the top of the ball; negative where the ball stands out',
    }),
    draft,
  ],
  steps: {
    R: { gives: 'length', expr: 'd/2', says: 'Radius of the ball' },
    h_c: {
      gives: 'length',
      expr: 'h + R + R*sin(alpha)',
      says: 'Depth of the circle on which the ball touches',
    },
    w: {
      gives: 'length',
      expr: '2*((h + R)*tan(alpha) + R/cos(alpha))',
      says: 'Width at the face: of the flanks at the ball’s center, carried up along the taper',
    },
  },
  result: 'w',
  refuse: [
    {
      when: 'h_c < 0',
      argument: 'depth',
      says: 'lets the ball touch above the face, where there is no pocket: take a smaller ball',
    },
  ],
  sources: [derived('Distance from the ball’s center to the flank equals its radius')],
  notes: [
    'An error in depth counts for 2 tan α in width, so a depth to 0.01 mm gives the width to 2 µm at 5°. Two balls of different size give the draft as well.',
  ],
  cautions: [
    {
      says: 'Wipe pocket and ball and let them come to one temperature: a chip under the ball reads as a narrow pocket.',
    },
  ],
  related: ['SEAT.PINWIDTH', 'SEAT.HEIGHT'],
});

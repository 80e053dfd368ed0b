import { derived, formula, input } from '../../core/define';

export const shoulderTravel = formula({
  name: 'SHOULDER.TRAVEL',
  summary: 'Free travel that a shoulder screw leaves; negative: it clamps the land by that much.',
  inputs: [
    input('shoulderLength', 'L_s', 'length', {
      above: '0 mm',
      usual: ['2 mm', '200 mm'],
      says: 'Length of the shoulder',
    }),
    input('landThickness', 'b', 'length', {
      min: '0 mm',
      usual: ['1 mm', '200 mm'],
      says: 'Thickness of the land that slides on it',
    }),
    input('shims', 't', 'length', {
      usual: ['0 mm', '10 mm'],
      min: '0 mm',
      default: '0 mm',
      says: 'Shims under the head, which take travel away',
    }),
  ],
  steps: { z: { gives: 'length', expr: 'L_s - b - t', says: 'Shoulder less what stands on it' } },
  result: 'z',
  sources: [derived('Sum of lengths')],
  cautions: [
    {
      when: 'z < 0',
      says: 'Negative: the head clamps the land before the shoulder seats, and the thread takes the load in bending.',
    },
    {
      says: 'A shoulder screw is a stop for travel: what runs into it must not be more than its thread bears.',
    },
  ],
  related: ['SHOULDER.VALUE', 'SPRING.TRAVEL'],
});

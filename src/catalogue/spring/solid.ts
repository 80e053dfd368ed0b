import { choice, formula, fromMemory, input } from '../../core/define';
import { wire } from './inputs';

export const springSolid = formula({
  name: 'SPRING.SOLID',
  summary: 'Solid length of a compression spring, coil on coil.',
  inputs: [
    wire,
    input('totalCoils', 'N_t', 'ratio', {
      above: 0,
      usual: [2, 40],
      says: 'All coils, with the dead ones at the ends; parts of a coil count',
    }),
    choice('ends', ['open', 'open ground', 'closed', 'closed ground'], {
      default: 'closed ground',
      says: 'Ends of the spring; closed: the last coil lies on its neighbor, also called squared',
    }),
  ],
  steps: {
    L_s: {
      gives: 'length',
      by: 'ends',
      cases: {
        open: 'd*(N_t + 1)',
        'open ground': 'd*N_t',
        closed: 'd*(N_t + 1)',
        'closed ground': 'd*N_t',
      },
      says: 'Wire on wire; grinding takes half a wire off each end',
    },
  },
  result: 'L_s',
  sources: [
    fromMemory('Shigley’s Mechanical Engineering Design, Table 10-1: dimensions of compression springs'),
  ],
  notes: [
    'Active coils: all of them for open ends, one less for open ground, two less for closed and for closed ground ends.',
    'Plating and wire at its upper limit add a few hundredths per coil: leave a reserve of travel, see SPRING.TRAVEL.',
  ],
  cautions: [
    { says: 'A spring driven solid stops the stroke like a solid stop and takes a set, or breaks.' },
  ],
  related: ['SPRING.TRAVEL', 'SPRING.RATE'],
});

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
      says: 'Ends of the spring; closed: the last coil lies on its neighbour, also called squared',
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
    'Plating and wire at its upper limit add a few hundredths per coil: leave reserve, see SPRING.TRAVEL.',
  ],
  cautions: [
    { says: 'A spring driven solid stops the stroke like a solid stop and takes a set, or breaks.' },
  ],
  related: ['SPRING.TRAVEL', 'SPRING.RATE'],
  checks: [
    {
      given: { wire: '2 mm', totalCoils: 10 },
      expect: '20 mm',
      within: 1e-12,
      from: 'by hand: ten wires of 2 mm',
    },
    {
      given: { wire: '0.08 in', totalCoils: 9, ends: 'open' },
      expect: '0.8 in',
      within: 1e-12,
      from: 'by hand: 0.08 × (9 + 1)',
    },
    {
      given: { wire: '1.5 mm', totalCoils: 8, ends: 'closed' },
      expect: '13.5 mm',
      within: 1e-12,
      from: 'by hand: 1.5 × (8 + 1)',
    },
    {
      given: { wire: '2.5 mm', totalCoils: 14, ends: 'open ground' },
      expect: '35 mm',
      within: 1e-12,
      from: 'Shigley, 10th edition, problem 10-3: plain and ground, 14 coils of 2.5 mm wire, by d N_t',
    },
    {
      given: { wire: '3 mm', totalCoils: 1, ends: 'closed ground' },
      expect: '3 mm',
      within: 1e-12,
      from: 'one ground coil is as high as its wire',
      limit: true,
    },
  ],
});

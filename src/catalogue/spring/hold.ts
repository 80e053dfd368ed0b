import { commonPractice, constant, derived, formula, input } from '../../core/define';

export const springHold = formula({
  name: 'SPRING.HOLD',
  summary: 'Preload that keeps an insert seated against its weight and the drag of seals and guides.',
  inputs: [
    input('movingMass', 'm', 'mass', {
      min: '0 g',
      usual: ['1 g', '20 kg'],
      says: 'Mass of all that moves with the insert',
    }),
    input('drag', 'F_d', 'force', {
      min: '0 N',
      usual: ['0 N', '500 N'],
      says: 'Friction of seals and guides that the spring must overcome',
    }),
    input('gLoad', 'n', 'ratio', {
      min: 0,
      default: 1,
      usual: [0, 10],
      says: 'Acceleration that the insert must stand, as a multiple of gravity; 1: its weight alone',
    }),
    input('margin', 'S', 'ratio', {
      min: 1,
      default: 1.5,
      usual: [1, 4],
      says: 'Preload over what is needed',
    }),
  ],
  constants: { g_n: constant('acceleration', '9.80665 m/s²', 'Standard gravity') },
  steps: {
    W: { gives: 'force', expr: 'm*g_n*n', says: 'Weight at this acceleration' },
    F: { gives: 'force', expr: 'S*(W + F_d)', says: 'Both held, with the margin' },
  },
  result: 'F',
  sources: [
    derived('Axial balance of the insert at rest in its seat'),
    commonPractice('Margin of 1.5 on a holding force'),
  ],
  notes: [
    'The spring need not resist injection where the melt presses the insert into its seat. Count the full weight even where the mold is used on its side: it is also carried and turned.',
  ],
  cautions: [
    {
      says: 'Where injection pressure pushes the insert out of its seat a spring does not hold it: it must be locked.',
    },
  ],
  related: ['SPRING.PRELOAD', 'SPRING.SHIM', 'SEAT.PUSHOUT'],
});

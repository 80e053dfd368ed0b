import { derived, commonPractice, formula, input } from '../../core/define';

const force = { min: '0 N', usual: ['0 N', '20 kN'] } as const;

export const seatPushOut = formula({
  name: 'SEAT.PUSHOUT',
  summary: 'Push that moves a tapered insert out, at a lift from its seat.',
  inputs: [
    input('lift', 'z', 'length', {
      min: '0 mm',
      usual: ['0 mm', '150 mm'],
      says: 'How far the insert is out of its seat; 0 for the first push',
    }),
    input('release', 'F_r', 'force', {
      ...force,
      says: 'Push that breaks the seat loose, from SEAT.RELEASE',
    }),
    input('springRate', 'k', 'stiffness', {
      min: '0 N/mm',
      usual: ['0.05 N/mm', '2000 N/mm'],
      says: 'Rate of the springs that pull the insert home, all together',
    }),
    input('springPreload', 'F_p', 'force', { ...force, says: 'Their preload in the closed mold' }),
    input('partGrip', 'F_g', 'force', {
      ...force,
      says: 'Force that strips the part, from EJECT.FORCE',
    }),
    input('vacuum', 'F_v', 'force', {
      ...force,
      default: '0 N',
      says: 'Suction under the insert or part, from EJECT.VACUUM; 0 once air gets in',
    }),
    input('margin', 'S', 'ratio', {
      min: 1,
      default: 1.5,
      usual: [1, 3],
      says: 'Push to plan for over push computed',
    }),
  ],
  steps: {
    F_s: { gives: 'force', expr: 'F_p + k*z', says: 'Springs at this lift' },
    R: { gives: 'force', expr: 'z > 0 ? 0 : F_r', says: 'The seat holds only until it has let go' },
    P: {
      gives: 'force',
      expr: 'S*(R + F_s + F_g + F_v)',
      says: 'All that holds the insert, with the margin',
    },
  },
  result: 'P',
  sources: [
    derived('Sum of the axial forces on the insert'),
    commonPractice('Margin of 1.5 to 2 on ejection and release forces'),
  ],
  notes: [
    'Try it at lift 0, just above it, and at the full stroke: the first push is often the hardest, the last one the longest against the spring.',
  ],
  cautions: [
    {
      when: 'z <= 0 and F_r > F_p + F_g + F_v',
      says: 'Most of the push vanishes when the seat lets go: the insert jumps. Push with a screw or a stop behind it, not with a blow.',
    },
    {
      says: 'The springs throw the insert back: keep fingers out of the opening, and hold or block it before reaching in.',
    },
  ],
  related: ['SEAT.RELEASE', 'SPRING.FORCE', 'EJECT.FORCE', 'EJECT.VACUUM'],
});

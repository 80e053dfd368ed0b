import { commonPractice, derived, input, list, procedure } from '../../core/define';

export const ejectTotal = procedure({
  name: 'EJECT.TOTAL',
  summary: 'Ejection force to design for: the forces added up, times a margin.',
  inputs: [
    list('forces', 'F_i', 'force', {
      min: '0 N',
      says: 'Range with the forces that hold the part: grip of each core, vacuum, spring',
    }),
    input('margin', 'S', 'ratio', {
      min: 1,
      default: 1.5,
      usual: [1, 3],
      says: 'Design force over the sum',
    }),
  ],
  gives: 'force',
  method: 'Adds the forces and multiplies by the margin.',
  steps: {
    F_s: { gives: 'force', says: 'Forces together', equation: 'F_s = sum of F_i' },
    F: { gives: 'force', says: 'With the margin', equation: 'F = S*F_s' },
  },
  run: ({ forces, margin }, show) => {
    const sum = forces.reduce((a, b) => a + b, 0);
    show('F_s', sum);
    show('F', margin * sum);
    return margin * sum;
  },
  native: ({ forces, margin }) => `${margin.text}*SUMPRODUCT(${forces.text})`,
  sources: [
    derived('All forces act along the ejection'),
    commonPractice('Margin of 1.5 to 2 on ejection forces, as friction and sticking are uncertain'),
  ],
  cautions: [
    {
      says: 'Check that what pushes can give this force, and that hands are clear when it does: a hand lever or an air cylinder stores it until the part lets go.',
    },
  ],
  related: ['EJECT.FORCE', 'EJECT.VACUUM', 'EJECT.PINCOUNT'],
});

import { derived, fromMemory, list, procedure } from '../../core/define';
import { refuse } from '../../core/refusal';
import {
  contributions,
  nativeOneEach,
  nativeRootSumSquare,
  nativeSum,
  rootSumSquare,
  sensitivities,
  tolerances,
} from './inputs';

/** One share for all, or one for each contributor. */
function sharesOf(shifts: readonly number[], count: number): readonly number[] {
  const [only] = shifts;
  if (shifts.length === 1 && only !== undefined) return Array.from({ length: count }, () => only);
  if (shifts.length !== count) {
    refuse(
      'shifts',
      `has ${shifts.length} entries, but tolerances has ${count}; give one number for all or one for each, without blank cells`,
    );
  }
  return shifts;
}

export const stackShift = procedure({
  name: 'STACK.SHIFT',
  summary: 'Tolerance stack, ±, in which a share of each tolerance is a shift of its mean.',
  inputs: [
    tolerances,
    list('shifts', 'm_i', 'ratio', {
      min: 0,
      max: 1,
      says: 'Share of each tolerance by which its mean may be off: one number for all, or a range as long as tolerances; 0 centered, 1 worst case',
    }),
    sensitivities,
  ],
  gives: 'length',
  method:
    'The shifts of the means add up at their worst; what is left of the tolerances adds as root-sum-square.',
  steps: {
    T_m: {
      gives: 'length',
      says: 'Shifts of the means, at their worst',
      equation: 'T_m = sum of m_i |s_i| t_i',
    },
    T_s: {
      gives: 'length',
      says: 'Scatter about the means',
      equation: 'T_s = √(sum of ((1 − m_i) s_i t_i)²)',
    },
    T: { gives: 'length', says: 'Both together, ±', equation: 'T = T_m + T_s' },
  },
  run: (x, show) => {
    const parts = contributions(x.tolerances, x.sensitivities);
    const shares = sharesOf(x.shifts, parts.length);
    const shifted = parts.reduce((sum, part, i) => sum + part * (shares[i] as number), 0);
    const scatter = rootSumSquare(parts.map((part, i) => part * (1 - (shares[i] as number))));
    show('T_m', shifted);
    show('T_s', scatter);
    show('T', shifted + scatter);
    return shifted + scatter;
  },
  native: ({ tolerances: own, sensitivities: factors, shifts }, write) => {
    nativeOneEach(write, own, factors, 'sensitivities');
    write.refuse(
      `AND(${shifts.count}<>1,${shifts.count}<>${own.count})`,
      'shifts has neither one entry nor one for each tolerance',
    );
    const only = write.step('m', `SUM(${shifts.text})`);
    // Ranges of other shapes are an error in the branch that takes entry by entry alone.
    const either = (one: string, each: string): string => `IF(${shifts.count}=1,${one},${each})`;
    const shifted = write.step(
      'T_m',
      either(`${only}*${nativeSum(own, factors)}`, nativeSum(own, factors, shifts.text)),
    );
    const left = `1-${shifts.text}`;
    const scatter = write.step(
      'T_s',
      either(
        `(1-${only})*${nativeRootSumSquare(own, factors)}`,
        nativeRootSumSquare(own, factors, left, left),
      ),
    );
    return `${shifted}+${scatter}`;
  },
  sources: [
    fromMemory('Greenwood and Chase, 1987: mean-shift model of tolerance stacks'),
    derived('A shift of a mean is the same in every assembly of a run, so shifts add; scatter does not'),
  ],
  notes: [
    'Between STACK.RSS (shift 0) and STACK.WORST (shift 1). A share of 0.2 to 0.3 suits a process that is watched; 0.5 and more one that is set up once and left, such as a single plate (common practice).',
  ],
  cautions: [
    {
      says: 'One mold is one assembly: what its plates are off is a shift, and only what varies from shot to shot or mold to mold is scatter.',
    },
  ],
  related: ['STACK.RSS', 'STACK.WORST', 'STACK.BENDER', 'STACK.TRIALS'],
});

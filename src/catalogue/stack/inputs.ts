import { input, list, type NativeInput, type NativeWriter } from '../../core/define';
import { refuse } from '../../core/refusal';

/** What the tolerance stacks share: their ranges, and a population against its limits. */

export const tolerances = list('tolerances', 't_i', 'length', {
  min: '0 mm',
  says: 'Range with the tolerances, each as its ± about the middle of its limits',
});
export const sensitivities = list('sensitivities', 's_i', 'ratio', {
  optional: true,
  says: 'Range with how much the stack moves for each unit of a contributor, with sign',
  whenLeftOut: '1 each',
});

/** What each contributor can move the stack, ±. */
export function contributions(
  own: readonly number[],
  factors: readonly number[] = own.map(() => 1),
): readonly number[] {
  if (factors.length !== own.length) {
    refuse(
      'sensitivities',
      `has ${factors.length} entries, but tolerances has ${own.length}; give one for each, without blank cells`,
    );
  }
  return own.map((t, i) => Math.abs(t * (factors[i] as number)));
}

export const rootSumSquare = (parts: readonly number[]): number => Math.hypot(...parts);

/** Refuses, as `contributions` does, where a list has not one entry for each tolerance. */
export function nativeOneEach(write: NativeWriter, own: NativeInput, each: NativeInput, name: string): void {
  if (each.given) write.refuse(`${own.count}<>${each.count}`, `${name} has another number of entries`);
}

const arrays = (...inputs: readonly NativeInput[]): string =>
  inputs
    .filter(({ given }) => given)
    .map(({ text }) => text)
    .join(',');

/** Of ranges of different shapes SUMPRODUCT makes an error. */
export const nativeSum = (own: NativeInput, factors: NativeInput, ...more: readonly string[]): string =>
  `SUMPRODUCT(${[own.text, ...(factors.given ? [`ABS(${factors.text})`] : []), ...more].join(',')})`;

export const nativeRootSumSquare = (
  own: NativeInput,
  factors: NativeInput,
  ...more: readonly string[]
): string => `SQRT(SUMPRODUCT(${[arrays(own, own, factors, factors), ...more].join(',')}))`;

export const CENTRED =
  'Assumes contributors that are independent, centered between their limits, and normal with the tolerance at three sigma.';

/** Of the dimension that a stack is about. */
const ANY_DIMENSION = 'Any dimension or gap of a drawing';

export const mean = input('mean', 'm', 'length', { noUsual: ANY_DIMENSION, says: 'Mean of the population' });
export const sigma = input('sigma', 'sigma', 'length', {
  above: '0 mm',
  usual: ['0.0001 mm', '1 mm'],
  says: 'Its standard deviation',
});
export const lower = input('lower', 'LSL', 'length', { noUsual: ANY_DIMENSION, says: 'Lower limit of size' });
export const upper = input('upper', 'USL', 'length', { noUsual: ANY_DIMENSION, says: 'Upper limit of size' });

export const limitsInOrder = {
  when: 'USL <= LSL',
  argument: 'upper',
  says: 'must be above {lower}',
} as const;

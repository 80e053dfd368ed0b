import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/catalogue';
import { inputsOf, type Formula } from '../../src/core/define';
import { answer } from '../../src/core/answer';
import { derivative, NoDerivative } from '../../src/core/expr/diff';
import { fold } from '../../src/core/expr/fold';
import { parseEquation } from '../../src/core/expr/parse';
import { compile } from '../../src/core/expr/run';
import { toText } from '../../src/core/expr/text';
import { slopeBy } from '../../src/derive/sensitivity';
import { checksOf } from '../support/checks';
import { valuesOf } from '../support/runCheck';

const d = (text: string): string =>
  toText(derivative(fold(parseEquation(text, (name) => name === 'x' || name === 'y')), 'x'));

describe('the derivative', () => {
  it.each([
    ['x^2', '2*x'],
    ['3*x', '3'],
    ['y/x', '-(y/x^2)'],
    ['sin(x)', 'cos(x)'],
    ['y + 5', '0'],
    ['x > 1 ? x^2 : y', '(x > 1 ? 2*x : 0)'],
    ['exp(2*x)', 'exp(2*x)*2'],
  ])('of %s is %s', (text, expected) => {
    expect(d(text)).toBe(expected);
  });

  it('of a rounding is refused', () => {
    expect(() => d('ceil(x)')).toThrow(NoDerivative);
  });

  it.each([
    'x^3*y',
    'sqrt(x + y)',
    'atan(x/y)',
    'ln(x)*y',
    'max(x, y)*x',
    'cbrt(x)',
    'x^y',
    'asin(x/20)',
    'acos(x/20)',
    'abs(x - y)*x',
    'tan(x/10)',
    'exp(-x)/y',
  ])('of %s agrees with a central difference', (text) => {
    const e = fold(parseEquation(text, (name) => name === 'x' || name === 'y'));
    const slotOf = (name: string): number => (name === 'x' ? 0 : 1);
    const [f, slope] = [compile(e, slotOf), compile(derivative(e, 'x'), slotOf)];
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 9, noNaN: true }),
        fc.double({ min: 0.5, max: 9, noNaN: true }),
        (x, y) => {
          fc.pre(Math.abs(x - y) > 1e-3);
          const h = 1e-5 * x;
          const at = (v: number): number => f(Float64Array.of(v, y));
          const difference = (at(x + h) - at(x - h)) / (2 * h);
          expect(slope(Float64Array.of(x, y))).toBeCloseTo(
            difference,
            4 - Math.ceil(Math.log10(Math.abs(difference) + 1)),
          );
        },
      ),
    );
  });
});

const formulas = catalogue.filter((definition): definition is Formula => definition.type === 'formula');

const compared = new Map<string, number>();

describe.each(formulas.map((formula) => [formula.name, formula] as const))(
  'the sensitivity of %s',
  (_, formula) => {
    it('agrees with central differences at every check', () => {
      for (const check of checksOf(formula)) {
        const values = valuesOf(formula, check);
        if (typeof answer(formula, values, 'mm') !== 'number') continue;
        inputsOf(formula).forEach((input, i) => {
          const x = values[i];
          if (input.reading.as !== 'quantity' || typeof x !== 'number' || x === 0) return;
          let exact: number;
          try {
            exact = slopeBy(formula, values, i);
          } catch (error) {
            expect(error).toBeInstanceOf(NoDerivative);
            return;
          }
          const at = (v: number): number => {
            try {
              return Number(
                answer(
                  formula,
                  values.map((value, j) => (j === i ? v : value)),
                  'mm',
                ),
              );
            } catch {
              return NaN;
            }
          };
          const h = 1e-5 * Math.abs(x);
          const [below, here, above] = [at(x - h), at(x), at(x + h)];
          const difference = (above - below) / (2 * h);
          // At a kink or a limit of the inputs the two sides differ: no difference to compare with.
          const kinked =
            Math.abs(above - 2 * here + below) > 1e-3 * Math.abs(above - below) + 1e-12 * Math.abs(here);
          if (!Number.isFinite(difference) || kinked) return;
          // Zero to a power below one has no slope; nothing else may lack one.
          if (Number.isNaN(exact) && values.includes(0)) return;
          compared.set(formula.name, (compared.get(formula.name) ?? 0) + 1);
          const scale = Math.max(Math.abs(difference), Math.abs(here / x) * 1e-3);
          expect(
            Math.abs(exact - difference) / (scale || 1),
            `${input.name}: ${exact} against ${difference}`,
          ).toBeLessThan(1e-5);
        });
      }
    });
  },
);

describe('the sensitivities', () => {
  it('were compared for every formula of a quantity that counts no whole things', () => {
    const sloped = formulas.filter(
      ({ inputs, steps, result }) =>
        inputs.some(({ reading }) => reading.as === 'quantity') && steps[result]?.gives !== 'count',
    );
    expect(sloped.length).toBeGreaterThan(80);
    expect(sloped.filter(({ name }) => !compared.has(name)).map(({ name }) => name)).toEqual([]);
  });
});

import fc from 'fast-check';
import { all, create, type FactoryFunctionMap } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { fold } from '../../src/core/expr/fold';
import { EquationError, parseEquation } from '../../src/core/expr/parse';
import { compile } from '../../src/core/expr/run';
import { toTex } from '../../src/core/expr/tex';
import { toText } from '../../src/core/expr/text';
import { num, op, variable, when, type Expr } from '../../src/core/expr/tree';
import { OPERATORS } from '../../src/core/expr/operators';

const NAMES = ['a', 'b', 'c'];
const known = (name: string): boolean => NAMES.includes(name);
const parse = (text: string): Expr => parseEquation(text, known);
const run = (e: Expr, values: readonly number[]): number =>
  compile(e, (name) => NAMES.indexOf(name))(Float64Array.from(values));

/** Walks the tree with the operator table alone: the plainest reading of an equation. */
function walk(e: Expr, values: Readonly<Record<string, number>>): number {
  switch (e.type) {
    case 'num':
      return e.value;
    case 'var':
      return values[e.name] ?? NaN;
    case 'if':
      return walk(e.test, values) !== 0 ? walk(e.then, values) : walk(e.else, values);
    case 'op':
      return OPERATORS[e.op].run(...e.args.map((arg) => walk(arg, values)));
  }
}

const { tree: anyExpr } = fc.letrec<{ tree: Expr; leaf: Expr; test: Expr }>((tie) => ({
  leaf: fc.oneof(
    fc.constantFrom(...NAMES).map(variable),
    fc.constantFrom(0, 1, 2, 3, 0.5, 10, 1.25).map(num),
  ),
  test: fc.oneof(
    { depthSize: 'small', withCrossShrink: true },
    fc
      .tuple(
        fc.constantFrom('lt' as const, 'le' as const, 'gt' as const, 'ge' as const),
        tie('tree'),
        tie('tree'),
      )
      .map(([name, x, y]) => op(name, x, y)),
    fc
      .tuple(fc.constantFrom('and' as const, 'or' as const), tie('test'), tie('test'))
      .map(([name, x, y]) => op(name, x, y)),
    tie('test').map((x) => op('not', x)),
  ),
  tree: fc.oneof(
    { depthSize: 'small', withCrossShrink: true },
    tie('leaf'),
    fc
      .tuple(
        fc.constantFrom(
          'add' as const,
          'sub' as const,
          'mul' as const,
          'div' as const,
          'pow' as const,
          'max' as const,
          'min' as const,
        ),
        tie('tree'),
        tie('tree'),
      )
      .map(([name, x, y]) => op(name, x, y)),
    fc
      .tuple(
        fc.constantFrom(
          'neg' as const,
          'sin' as const,
          'cos' as const,
          'tan' as const,
          'atan' as const,
          'sqrt' as const,
          'exp' as const,
          'ln' as const,
          'abs' as const,
          'cbrt' as const,
          'floor' as const,
          'ceil' as const,
        ),
        tie('tree'),
      )
      .map(([name, x]) => op(name, x)),
    fc.tuple(tie('test'), tie('tree'), tie('tree')).map(([t, x, y]) => when(t, x, y)),
  ),
}));
const anyValues = fc.tuple(...NAMES.map(() => fc.double({ min: -20, max: 20, noNaN: true })));

/** The same number or none; a zero has no sign here. */
const same = (x: number, y: number): boolean => x === y || (Number.isNaN(x) && Number.isNaN(y));

describe('an equation', () => {
  it('is printed so that it reads back as the same tree', () => {
    fc.assert(
      fc.property(anyExpr, (e) => {
        expect(fold(parse(toText(fold(e))))).toEqual(fold(e));
      }),
      { numRuns: 2000 },
    );
  });

  it('runs as closures to what walking the tree gives, to the bit', () => {
    fc.assert(
      fc.property(anyExpr, anyValues, (e, values) => {
        const walked = walk(e, Object.fromEntries(NAMES.map((name, i) => [name, values[i] ?? NaN])));
        expect(same(run(e, values), walked), `${run(e, values)} ${walked}`).toBe(true);
        expect(same(run(fold(e), values), walked), `folded ${run(fold(e), values)} ${walked}`).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });

  it('gives what mathjs itself gives', () => {
    const math = create(all as FactoryFunctionMap);
    const texts = [
      'a - b - c', 'a/b/c', '-a^2', '2^3^2', '(-a)^2', 'a*-b', 'a + b*c^2/(a - c)', 'sqrt(a^2 + b^2)', 'atan(a/b)', 'cbrt(-a)',
      'a > b ? sin(a) : cos(b)', 'max(a, b, c) - min(a, b)', 'a > 1 and b > 1 ? 1 : 2', 'exp(-a) + abs(-b)', 'pi*a^2/4', '2*a^-2', '1e-3*a',
      'floor(a) + ceil(b)', 'acos(0.3)*asin(0.2)*tan(a)', 'a >= b or a <= c ? a : b',
    ]; // prettier-ignore
    for (const text of texts) {
      for (const values of [
        [1.2, 2.3, 0.7],
        [3, 0.5, 2],
        [0.1, 7, 9],
      ]) {
        const scope = Object.fromEntries(NAMES.map((name, i) => [name, values[i] ?? NaN]));
        expect(run(parse(text), values), text).toBeCloseTo(Number(math.evaluate(text, scope)), 12);
      }
    }
  });

  it.each([
    ['2 a', 'multiplication without a sign'],
    ['a + F', 'unknown symbol F'],
    ['a < b < c', 'chained comparison'],
    ['x = a', 'not allowed'],
    ['[a, b]', 'not allowed'],
    ['"text"', 'only numbers'],
    ['a%', '%'],
    ['a!', 'factorial'],
    ['sinh(a)', 'unknown function sinh'],
    ['sqrt(a, b)', 'sqrt takes 1 argument'],
    ['max(a)', 'two or more'],
    ['a == b', 'equal'],
    ['', 'only numbers'],
    ['a +', 'Unexpected end'],
  ])('refuses "%s" because of %s', (text, reason) => {
    expect(() => parse(text)).toThrow(EquationError);
    expect(() => parse(text)).toThrow(reason);
  });

  it('settles given() by what was given and drops the dead branch', () => {
    const read = (given: boolean): Expr =>
      fold(parseEquation('given(b) and a > b ? b : a', known, () => given));
    expect(toText(read(false))).toBe('a');
    expect(toText(read(true))).toBe('(a > b ? b : a)');
  });

  it.each([
    ['a/(b + c)', '\\frac{a}{b + c}'],
    ['(a + b)*c', '\\left(a + b\\right)\\,c'],
    ['a^2/4', '\\frac{a^{2}}{4}'],
    ['2*pi*a', '2\\,\\pi\\,a'],
    ['-(a + b)', '-\\left(a + b\\right)'],
    ['(a*b)^2', '\\left(a\\,b\\right)^{2}'],
    ['sin(a)^2', '\\left(\\sin\\left(a\\right)\\right)^{2}'],
  ])('%s is typeset as %s', (text, tex) => {
    expect(toTex(parse(text))).toBe(tex);
  });
});

import { erf } from '../erf';
import { over, power, RATIO, sameDimension, times, type Dimension } from '../dimension';
import { raise } from './raise';
import { num, op, when, type Expr, type OperatorName } from './tree';

/** The dimension of a subexpression; `any` for a literal zero, which fits everything. */
export type Dim = Dimension | 'any';

/** A dimension rule: gives the result's dimension or a sentence that says what does not fit. */
export type DimRule = (dims: readonly Dim[], args: readonly Expr[]) => Dim | { readonly problem: string };

interface Infix {
  readonly precedence: number;
  readonly associative: 'left' | 'right' | 'none';
  /** As written in an equation's text. */
  readonly text: string;
}

/** Everything that the visitors know about one operator or function: the one place to add another. */
export interface Operator {
  readonly arity: number | 'two or more';
  readonly infix?: Infix;
  /** Truth is 1, falsehood 0. */
  readonly run: (...args: number[]) => number;
  readonly dims: DimRule;
  /** Arguments come as TeX, already bracketed where the infix rule asks for it. */
  readonly tex: (args: readonly string[]) => string;
  /** Worksheet-native form; arguments come fully bracketed. */
  readonly native: (args: readonly string[]) => string;
  /** The same as `run` in JavaScript, to the bit; arguments come as names, numbers or fully bracketed. */
  readonly js: (args: readonly string[]) => string;
  /** Partial derivative with respect to each argument; absent where there is none. */
  readonly partials?: (args: readonly Expr[]) => readonly Expr[];
}

const isRatio = (d: Dim): boolean => d === 'any' || sameDimension(d, RATIO);

const same: DimRule = (dims) => {
  const known = dims.filter((d): d is Dimension => d !== 'any');
  const [first] = known;
  if (first === undefined) return 'any';
  return known.every((d) => sameDimension(d, first))
    ? first
    : { problem: 'adds or compares unlike quantities' };
};

const compared: DimRule = (dims, args) => {
  const result = same(dims, args);
  return typeof result === 'object' && 'problem' in result ? result : RATIO;
};

const ratios: DimRule = (dims) =>
  dims.every(isRatio) ? RATIO : { problem: 'takes a ratio or an angle, not a quantity with a unit' };

const product: DimRule = (dims) =>
  times(dims[0] === 'any' ? RATIO : (dims[0] ?? RATIO), dims[1] === 'any' ? RATIO : (dims[1] ?? RATIO));
const quotient: DimRule = (dims) =>
  over(dims[0] === 'any' ? RATIO : (dims[0] ?? RATIO), dims[1] === 'any' ? RATIO : (dims[1] ?? RATIO));
const unchanged: DimRule = (dims) => dims[0] ?? RATIO;
const root =
  (n: number): DimRule =>
  ([d]) =>
    d === undefined || d === 'any' ? 'any' : power(d, 1 / n);

const constantExponent = (e: Expr | undefined): number | undefined => {
  if (e?.type === 'num') return e.value;
  if (e?.type === 'op' && e.op === 'neg') {
    const inner = constantExponent(e.args[0]);
    return inner === undefined ? undefined : -inner;
  }
  return undefined;
};

const raised: DimRule = (dims, args) => {
  const [base = RATIO, exponent = RATIO] = dims;
  if (!isRatio(exponent)) return { problem: 'has an exponent with a unit' };
  if (isRatio(base)) return RATIO;
  const n = constantExponent(args[1]);
  return n === undefined
    ? { problem: 'raises a quantity with a unit to a power that is not a number' }
    : power(base as Dimension, n);
};

const call =
  (name: string) =>
  (args: readonly string[]): string =>
    `${name}(${args.join(',')})`;
const inBrackets =
  (sign: string) =>
  ([a = '', b = '']: readonly string[]): string =>
    `(${a}${sign}${b})`;
const texCall =
  (name: string) =>
  ([x = '']: readonly string[]): string =>
    `${name}\\left(${x}\\right)`;

const infix = (precedence: number, text: string, associative: Infix['associative'] = 'left'): Infix => ({
  precedence,
  associative,
  text,
});

const binary =
  (sign: string) =>
  ([a = '', b = '']: readonly string[]): string =>
    `${a} ${sign} ${b}`;
const nativeBinary =
  (sign: string) =>
  ([a = '', b = '']: readonly string[]): string =>
    `${a}${sign}${b}`;

const comparison = (
  text: string,
  tex: string,
  native: string,
  run: (a: number, b: number) => boolean,
): Operator => ({
  arity: 2,
  infix: infix(3, text, 'none'),
  run: (a = NaN, b = NaN) => (run(a, b) ? 1 : 0),
  dims: compared,
  tex: binary(tex),
  native: nativeBinary(native),
  js: ([a = '', b = '']) => `(${a}${text}${b}?1:0)`,
});

const ONE = num(1);
const ZERO = num(0);
type Pair = readonly [Expr, Expr];
const first = (args: readonly Expr[]): Expr => args[0] ?? ZERO;
const pair = (args: readonly Expr[]): Pair => [args[0] ?? ZERO, args[1] ?? ZERO];

/** max and min pick the derivative of the argument they take; at a tie, that of the first. */
const picked =
  (better: 'ge' | 'le') =>
  (args: readonly Expr[]): readonly Expr[] => {
    const [a, b] = pair(args);
    const test = op(better, a, b);
    return [when(test, ONE, ZERO), when(test, ZERO, ONE)];
  };

export const OPERATORS: Readonly<Record<OperatorName, Operator>> = {
  or: {
    arity: 2,
    infix: infix(1, 'or'),
    run: (a = 0, b = 0) => (a !== 0 || b !== 0 ? 1 : 0),
    dims: ratios,
    tex: binary('\\text{ or }'),
    native: call('OR'),
    js: ([a = '', b = '']) => `(${a}!==0||${b}!==0?1:0)`,
  },
  and: {
    arity: 2,
    infix: infix(2, 'and'),
    run: (a = 0, b = 0) => (a !== 0 && b !== 0 ? 1 : 0),
    dims: ratios,
    tex: binary('\\text{ and }'),
    native: call('AND'),
    js: ([a = '', b = '']) => `(${a}!==0&&${b}!==0?1:0)`,
  },
  // Written as a function, for mathjs binds it tighter than the comparison that it is about.
  not: {
    arity: 1,
    run: (a = NaN) => (a === 0 ? 1 : 0),
    dims: ratios,
    tex: ([a = '']) => `\\text{not }\\left(${a}\\right)`,
    native: call('NOT'),
    js: ([a = '']) => `(${a}===0?1:0)`,
  },
  lt: comparison('<', '<', '<', (a, b) => a < b),
  le: comparison('<=', '\\le', '<=', (a, b) => a <= b),
  gt: comparison('>', '>', '>', (a, b) => a > b),
  ge: comparison('>=', '\\ge', '>=', (a, b) => a >= b),
  add: {
    arity: 2,
    infix: infix(4, '+'),
    run: (a = NaN, b = NaN) => a + b,
    dims: same,
    tex: binary('+'),
    native: nativeBinary('+'),
    js: inBrackets('+'),
    partials: () => [ONE, ONE],
  },
  sub: {
    arity: 2,
    infix: infix(4, '-'),
    run: (a = NaN, b = NaN) => a - b,
    dims: same,
    tex: binary('-'),
    native: nativeBinary('-'),
    js: inBrackets('-'),
    partials: () => [ONE, num(-1)],
  },
  mul: {
    arity: 2,
    infix: infix(5, '*'),
    run: (a = NaN, b = NaN) => a * b,
    dims: product,
    // A number before a letter needs no sign; a number behind anything does.
    tex: ([a = '', b = '']) =>
      /^\d/.test(b) || (/^[{(]/.test(b) && /\d$/.test(a)) ? `${a} \\cdot ${b}` : `${a}\\,${b}`,
    native: nativeBinary('*'),
    js: inBrackets('*'),
    partials: (args) => [pair(args)[1], pair(args)[0]],
  },
  div: {
    arity: 2,
    infix: infix(5, '/'),
    run: (a = NaN, b = NaN) => a / b,
    dims: quotient,
    tex: ([a = '', b = '']) => `\\frac{${a}}{${b}}`,
    native: nativeBinary('/'),
    js: inBrackets('/'),
    partials: (args) => {
      const [a, b] = pair(args);
      return [op('div', ONE, b), op('neg', op('div', a, op('pow', b, num(2))))];
    },
  },
  neg: {
    arity: 1,
    infix: infix(6, '-'),
    run: (a = NaN) => -a,
    dims: unchanged,
    tex: ([a = '']) => `-${a}`,
    native: ([a = '']) => `-${a}`,
    js: ([a = '']) => `(-${a})`,
    partials: () => [num(-1)],
  },
  pow: {
    arity: 2,
    infix: infix(7, '^', 'right'),
    run: (a = NaN, b = NaN) => raise(a, b),
    dims: raised,
    tex: ([a = '', b = '']) => `${a}^{${b}}`,
    native: nativeBinary('^'),
    js: ([a = '', b = '']) => {
      // A product at once where that is short: a call costs more than it.
      if (/^\w+$/.test(a) && /^[234]$/.test(b)) return `(${Array(Number(b)).fill(a).join('*')})`;
      return `raise(${a},${b})`;
    },
    partials: (args) => {
      const [a, b] = pair(args);
      // With a constant exponent the logarithm is not asked for, so a base below zero is no trouble.
      const byExponent =
        b.type === 'num' ? ZERO : when(op('gt', a, ZERO), op('mul', op('pow', a, b), op('ln', a)), ZERO);
      return [op('mul', b, op('pow', a, op('sub', b, ONE))), byExponent];
    },
  },
  sin: {
    arity: 1,
    run: Math.sin,
    dims: ratios,
    tex: texCall('\\sin'),
    native: call('SIN'),
    js: call('Math.sin'),
    partials: (a) => [op('cos', first(a))],
  },
  cos: {
    arity: 1,
    run: Math.cos,
    dims: ratios,
    tex: texCall('\\cos'),
    native: call('COS'),
    js: call('Math.cos'),
    partials: (a) => [op('neg', op('sin', first(a)))],
  },
  tan: {
    arity: 1,
    run: Math.tan,
    dims: ratios,
    tex: texCall('\\tan'),
    native: call('TAN'),
    js: call('Math.tan'),
    partials: (a) => [op('div', ONE, op('pow', op('cos', first(a)), num(2)))],
  },
  asin: {
    arity: 1,
    run: Math.asin,
    dims: ratios,
    tex: texCall('\\arcsin'),
    native: call('ASIN'),
    js: call('Math.asin'),
    partials: (a) => [op('div', ONE, op('sqrt', op('sub', ONE, op('pow', first(a), num(2)))))],
  },
  acos: {
    arity: 1,
    run: Math.acos,
    dims: ratios,
    tex: texCall('\\arccos'),
    native: call('ACOS'),
    js: call('Math.acos'),
    partials: (a) => [op('neg', op('div', ONE, op('sqrt', op('sub', ONE, op('pow', first(a), num(2))))))],
  },
  atan: {
    arity: 1,
    run: Math.atan,
    dims: ratios,
    tex: texCall('\\arctan'),
    native: call('ATAN'),
    js: call('Math.atan'),
    partials: (a) => [op('div', ONE, op('add', ONE, op('pow', first(a), num(2))))],
  },
  sqrt: {
    arity: 1,
    run: Math.sqrt,
    dims: root(2),
    tex: ([a = '']) => `\\sqrt{${a}}`,
    native: call('SQRT'),
    js: call('Math.sqrt'),
    partials: (a) => [op('div', ONE, op('mul', num(2), op('sqrt', first(a))))],
  },
  cbrt: {
    arity: 1,
    run: Math.cbrt,
    dims: root(3),
    tex: ([a = '']) => `\\sqrt[3]{${a}}`,
    // The worksheet's ^ refuses a base below zero.
    native: ([a = '']) => `SIGN(${a})*ABS(${a})^(1/3)`,
    js: call('Math.cbrt'),
    partials: (a) => [op('div', ONE, op('mul', num(3), op('pow', op('cbrt', first(a)), num(2))))],
  },
  exp: {
    arity: 1,
    run: Math.exp,
    dims: ratios,
    tex: ([a = '']) => `e^{${a}}`,
    native: call('EXP'),
    js: call('Math.exp'),
    partials: (a) => [op('exp', first(a))],
  },
  ln: {
    arity: 1,
    run: Math.log,
    dims: ratios,
    tex: texCall('\\ln'),
    native: call('LN'),
    js: call('Math.log'),
    partials: (a) => [op('div', ONE, first(a))],
  },
  erf: {
    arity: 1,
    run: erf,
    dims: ratios,
    tex: texCall('\\operatorname{erf}'),
    native: call('ERF'),
    js: call('erf'),
    partials: (a) => [
      op('mul', num(2 / Math.sqrt(Math.PI)), op('exp', op('neg', op('pow', first(a), num(2))))),
    ],
  },
  abs: {
    arity: 1,
    run: Math.abs,
    dims: unchanged,
    tex: ([a = '']) => `\\left|${a}\\right|`,
    native: call('ABS'),
    js: call('Math.abs'),
    partials: (a) => [when(op('ge', first(a), ZERO), ONE, num(-1))],
  },
  max: {
    arity: 2,
    run: Math.max,
    dims: same,
    tex: (a) => `\\max\\left(${a.join(', ')}\\right)`,
    native: call('MAX'),
    js: call('Math.max'),
    partials: picked('ge'),
  },
  min: {
    arity: 2,
    run: Math.min,
    dims: same,
    tex: (a) => `\\min\\left(${a.join(', ')}\\right)`,
    native: call('MIN'),
    js: call('Math.min'),
    partials: picked('le'),
  },
  ceil: {
    arity: 1,
    run: Math.ceil,
    dims: ratios,
    tex: ([a = '']) => `\\left\\lceil ${a} \\right\\rceil`,
    native: ([a = '']) => `-INT(-${a})`,
    js: call('Math.ceil'),
  },
  floor: {
    arity: 1,
    run: Math.floor,
    dims: ratios,
    tex: ([a = '']) => `\\left\\lfloor ${a} \\right\\rfloor`,
    native: call('INT'),
    js: call('Math.floor'),
  },
};

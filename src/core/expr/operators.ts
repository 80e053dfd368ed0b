import { erf } from '../erf';
import { over, power, RATIO, sameDimension, times, type Dimension } from '../dimension';
import { raise } from './raise';
import type { Expr, OperatorName } from './tree';

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
  },
  sub: {
    arity: 2,
    infix: infix(4, '-'),
    run: (a = NaN, b = NaN) => a - b,
    dims: same,
    tex: binary('-'),
    native: nativeBinary('-'),
    js: inBrackets('-'),
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
  },
  div: {
    arity: 2,
    infix: infix(5, '/'),
    run: (a = NaN, b = NaN) => a / b,
    dims: quotient,
    tex: ([a = '', b = '']) => `\\frac{${a}}{${b}}`,
    native: nativeBinary('/'),
    js: inBrackets('/'),
  },
  neg: {
    arity: 1,
    infix: infix(6, '-'),
    run: (a = NaN) => -a,
    dims: unchanged,
    tex: ([a = '']) => `-${a}`,
    native: ([a = '']) => `-${a}`,
    js: ([a = '']) => `(-${a})`,
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
  },
  sin: {
    arity: 1,
    run: Math.sin,
    dims: ratios,
    tex: texCall('\\sin'),
    native: call('SIN'),
    js: call('Math.sin'),
  },
  cos: {
    arity: 1,
    run: Math.cos,
    dims: ratios,
    tex: texCall('\\cos'),
    native: call('COS'),
    js: call('Math.cos'),
  },
  tan: {
    arity: 1,
    run: Math.tan,
    dims: ratios,
    tex: texCall('\\tan'),
    native: call('TAN'),
    js: call('Math.tan'),
  },
  asin: {
    arity: 1,
    run: Math.asin,
    dims: ratios,
    tex: texCall('\\arcsin'),
    native: call('ASIN'),
    js: call('Math.asin'),
  },
  acos: {
    arity: 1,
    run: Math.acos,
    dims: ratios,
    tex: texCall('\\arccos'),
    native: call('ACOS'),
    js: call('Math.acos'),
  },
  atan: {
    arity: 1,
    run: Math.atan,
    dims: ratios,
    tex: texCall('\\arctan'),
    native: call('ATAN'),
    js: call('Math.atan'),
  },
  sqrt: {
    arity: 1,
    run: Math.sqrt,
    dims: root(2),
    tex: ([a = '']) => `\\sqrt{${a}}`,
    native: call('SQRT'),
    js: call('Math.sqrt'),
  },
  cbrt: {
    arity: 1,
    run: Math.cbrt,
    dims: root(3),
    tex: ([a = '']) => `\\sqrt[3]{${a}}`,
    // The worksheet's ^ refuses a base below zero.
    native: ([a = '']) => `SIGN(${a})*ABS(${a})^(1/3)`,
    js: call('Math.cbrt'),
  },
  exp: {
    arity: 1,
    run: Math.exp,
    dims: ratios,
    tex: ([a = '']) => `e^{${a}}`,
    native: call('EXP'),
    js: call('Math.exp'),
  },
  ln: {
    arity: 1,
    run: Math.log,
    dims: ratios,
    tex: texCall('\\ln'),
    native: call('LN'),
    js: call('Math.log'),
  },
  erf: {
    arity: 1,
    run: erf,
    dims: ratios,
    tex: texCall('\\operatorname{erf}'),
    native: call('ERF'),
    js: call('erf'),
  },
  abs: {
    arity: 1,
    run: Math.abs,
    dims: unchanged,
    tex: ([a = '']) => `\\left|${a}\\right|`,
    native: call('ABS'),
    js: call('Math.abs'),
  },
  max: {
    arity: 2,
    run: Math.max,
    dims: same,
    tex: (a) => `\\max\\left(${a.join(', ')}\\right)`,
    native: call('MAX'),
    js: call('Math.max'),
  },
  min: {
    arity: 2,
    run: Math.min,
    dims: same,
    tex: (a) => `\\min\\left(${a.join(', ')}\\right)`,
    native: call('MIN'),
    js: call('Math.min'),
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

/** Elementary functions, whole numbers and counting. */
import { CellError } from '../../cells/value';
import { compareNumbers } from '../compare';
import { ArrayValue, raise, Reference, type Scalar, type Value } from '../values';
import { pairsIn, single, strictNumber } from './numbersIn';
import { type Context, inContext, plain, volatile } from './spec';

function power(base: number, exponent: number): number {
  if (base === 0 && exponent <= 0) return raise(exponent === 0 ? '#NUM!' : '#DIV/0!');
  return base ** exponent;
}

function modulo(value: number, divisor: number): number {
  if (divisor === 0) return raise('#DIV/0!');
  const quotient = value / divisor;
  if (Math.abs(quotient) > 1.125899906842624e15) return raise('#NUM!');
  const rest = value - divisor * Math.floor(quotient);
  return Math.sign(rest) === -Math.sign(divisor) ? 0 : rest;
}

const logarithm = (value: number, base: number): number => {
  if (value <= 0 || base <= 0) return raise('#NUM!');
  if (base === 1) return raise('#DIV/0!');
  if (base === 10) return Math.log10(value);
  return base === 2 ? Math.log2(value) : Math.log(value) / Math.log(base);
};

/** n·(n−step)·(n−2·step)… */
function descending(value: number, step: 1 | 2): number {
  let product = 1;
  for (let factor = value; factor > 1; factor -= step) product *= factor;
  return product;
}

export const factorial = (value: number): number =>
  value < 0 || value > 170 ? raise('#NUM!') : descending(value, 1);

/** Ways to choose k of n; multiplied up so that every intermediate result is whole. */
export function choose(n: number, k: number): number {
  if (n < 0 || k < 0 || k > n) return raise('#NUM!');
  const fewer = Math.min(k, n - k);
  let ways = 1;
  for (let i = 1; i <= fewer && Number.isFinite(ways); i++) ways = (ways * (n - fewer + i)) / i;
  return ways < 2 ** 53 ? Math.round(ways) : ways;
}

function permutations(n: number, k: number): number {
  if (n < 0 || k < 0 || k > n) return raise('#NUM!');
  let ways = 1;
  for (let i = 0; i < k && Number.isFinite(ways); i++) ways *= n - i;
  return ways;
}

const whole = (value: number): number => {
  const number = Math.trunc(value);
  return value < 0 || number > Number.MAX_SAFE_INTEGER ? raise('#NUM!') : number;
};

/** Whole numbers of arguments; blank cells do not count, dates in text and truth values are refused. */
function wholesIn(context: Context, args: readonly Value[]): number[] {
  const numbers: number[] = [];
  for (const arg of args) {
    if (arg instanceof Reference || arg instanceof ArrayValue) {
      context.each(arg, (value) => {
        if (typeof value === 'string' && !Number.isFinite(Number(value))) raise('#VALUE!');
        if (value !== null) numbers.push(whole(strictNumber(value, context.date1904)));
      });
    } else numbers.push(whole(strictNumber(single(context, arg), context.date1904)));
  }
  return numbers;
}

const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));
const lcm = (a: number, b: number): number => (a === 0 || b === 0 ? 0 : (a / gcd(a, b)) * b);

const numberOf = (value: Scalar): number | undefined => {
  if (value instanceof CellError) return raise(value);
  return typeof value === 'number' ? value : undefined;
};

/** Products of what stands at the same place, summed; whatever is no number is 0. */
function sumOfProducts(first: ArrayValue, rest: readonly ArrayValue[]): number {
  if (rest.some((one) => one.rows !== first.rows || one.columns !== first.columns)) return raise('#VALUE!');
  const all = [first, ...rest];
  const stored = Math.max(...all.map((one) => one.storedRows));
  let sum = 0;
  for (let row = 0; row < stored; row++) {
    for (let column = 0; column < first.columns; column++) {
      let product = 1;
      for (const one of all) product *= numberOf(one.at(row, column)) ?? 0;
      sum += product;
    }
  }
  // The rows below hold what is the same everywhere: blanks, or a constant's repetition.
  const tail = all.reduce((product, one) => product * (numberOf(one.tail) ?? 0), 1);
  return sum + (stored < first.rows ? tail * (first.rows - stored) * first.columns : 0);
}

const sumOfPairs = (name: string, term: (x: number, y: number) => number) =>
  plain(name, 'aa', (xs, ys) => {
    const pairs = pairsIn(xs, ys);
    if (pairs.length === 0) return raise('#DIV/0!');
    return pairs.reduce((sum, [x, y]) => sum + term(x, y), 0);
  });

export const arithmetic = [
  plain('ABS', 'n', Math.abs),
  plain('SIGN', 'n', Math.sign),
  plain('SQRT', 'n', Math.sqrt),
  plain('SQRTPI', 'f', (value) => Math.sqrt(strictNumber(value) * Math.PI)),
  plain('EXP', 'n', Math.exp),
  plain('LN', 'n', (value) => logarithm(value, Math.E)),
  plain('LOG10', 'n', (value) => logarithm(value, 10)),
  plain('LOG', 'nn?', (value, base = 10) => logarithm(value, base)),
  plain('POWER', 'nn', power),
  plain('MOD', 'nn', modulo),
  plain('QUOTIENT', 'ff', (value, divisor) => {
    const by = strictNumber(divisor);
    return by === 0 ? raise('#DIV/0!') : Math.trunc(strictNumber(value) / by);
  }),
  plain('FACT', 'n', (value) => factorial(value < 0 ? value : Math.trunc(value))),
  plain('FACTDOUBLE', 'f', (value) => {
    const number = Math.trunc(strictNumber(value));
    return number < -1 ? raise('#NUM!') : descending(number, 2);
  }),
  plain('COMBIN', 'nn', (n, k) => choose(Math.trunc(n), Math.trunc(k))),
  plain('COMBINA', 'nn', (n, k) => {
    const [of, taken] = [Math.trunc(n), Math.trunc(k)];
    if (of < 0 || taken < 0 || (of === 0 && taken > 0)) return raise('#NUM!');
    return taken === 0 ? 1 : choose(of + taken - 1, taken);
  }),
  plain('PERMUT', 'nn', (n, k) => permutations(Math.trunc(n), Math.trunc(k))),
  plain('PERMUTATIONA', 'nn', (n, k) => {
    const [of, taken] = [Math.trunc(n), Math.trunc(k)];
    return of < 0 || taken < 0 ? raise('#NUM!') : of ** taken;
  }),
  inContext('GCD', '(r)+', (context, ...args) => wholesIn(context, args).reduce(gcd, 0)),
  inContext('LCM', '(r)+', (context, ...args) => {
    const least = wholesIn(context, args).reduce(lcm, 1);
    return least > Number.MAX_SAFE_INTEGER ? raise('#NUM!') : least;
  }),
  inContext('MULTINOMIAL', '(r)+', (context, ...args) => {
    let sum = 0;
    let ways = 1;
    for (const number of wholesIn(context, args)) {
      sum += number;
      ways *= choose(sum, number);
    }
    return ways;
  }),
  plain('SERIESSUM', 'nnna', (x, first, step, coefficients) =>
    coefficients
      .dense()
      .reduce<number>((sum, value, at) => sum + strictNumber(value) * x ** (first + at * step), 0),
  ),
  plain('SUMPRODUCT', 'a(a)*', (first, ...rest) => sumOfProducts(first, rest)),
  sumOfPairs('SUMXMY2', (x, y) => (x - y) ** 2),
  sumOfPairs('SUMX2MY2', (x, y) => x ** 2 - y ** 2),
  sumOfPairs('SUMX2PY2', (x, y) => x ** 2 + y ** 2),
  plain('DELTA', 'ff?', (a, b = 0) => (compareNumbers(strictNumber(a), strictNumber(b)) === 0 ? 1 : 0)),
  plain('GESTEP', 'ff?', (value, step = 0) => (strictNumber(value) >= strictNumber(step) ? 1 : 0)),
  volatile(inContext('RAND', '', (context) => context.random())),
  volatile(
    inContext('RANDBETWEEN', 'nn', (context, bottom, top) => {
      const low = Math.ceil(bottom);
      const high = Math.floor(top);
      return low > high ? raise('#NUM!') : low + Math.floor(context.random() * (high - low + 1));
    }),
  ),
  volatile(
    inContext('RANDARRAY', 'n?n?n?n?b?', (context, rows, columns, least, most, isWhole = false) => {
      const low = least ?? 0;
      const high = most ?? 1;
      if (low > high || (isWhole && !(Number.isInteger(low) && Number.isInteger(high))))
        return raise('#VALUE!');
      return ArrayValue.build(Math.trunc(rows ?? 1), Math.trunc(columns ?? 1), () =>
        isWhole
          ? low + Math.floor(context.random() * (high - low + 1))
          : low + context.random() * (high - low),
      );
    }),
  ),
];

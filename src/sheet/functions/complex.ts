/** Complex numbers, which a spreadsheet holds as text: `3-4i`, `j`, `1.5E-3+2j`. */
import type { CellError } from '../../cells/value';
import { numberText } from '../coerce';
import { ArrayValue, raise, Reference, type Scalar, type Value } from '../values';
import { single, strictNumber } from './numbersIn';
import { type Context, inContext, plain, type SheetFunction } from './spec';

interface Complex {
  readonly re: number;
  readonly im: number;
  readonly unit: 'i' | 'j';
}
type Cell = Exclude<Scalar, CellError>;

const NUMBER = '(?:\\d+\\.?\\d*|\\.\\d+)(?:E[+-]?\\d+)?';
const FORM = new RegExp(`^(?:([+-]?${NUMBER})(?![ij\\d.E]))?(?:([+-]?(?:${NUMBER})?)([ij]))?$`, 'i');

function read(value: Cell): Complex {
  if (typeof value === 'boolean') return raise('#VALUE!');
  if (typeof value !== 'string') return { re: value ?? 0, im: 0, unit: 'i' };
  const [whole, re, im, unit] = FORM.exec(value) ?? [];
  // A capital I would be read by nobody else either.
  if (whole === undefined || whole === '' || unit === 'I' || unit === 'J') return raise('#NUM!');
  if (re !== undefined && im !== undefined && !/^[+-]/.test(im)) return raise('#NUM!');
  return {
    re: re === undefined ? 0 : Number(re),
    im: im === undefined ? 0 : /^[+-]?$/.test(im) ? Number(`${im}1`) : Number(im),
    unit: unit === 'j' ? 'j' : 'i',
  };
}

function write({ re, im, unit }: Complex): string {
  if (!Number.isFinite(re) || !Number.isFinite(im)) return raise('#NUM!');
  const real = numberText(re);
  if (im === 0) return real;
  const size = Math.abs(im) === 1 ? '' : numberText(Math.abs(im));
  const imaginary = `${size}${unit}`;
  if (re === 0) return `${im < 0 ? '-' : ''}${imaginary}`;
  return `${real}${im < 0 ? '-' : '+'}${imaginary}`;
}

type Parts = readonly [re: number, im: number];
const over = (parts: Parts, z: Complex): Complex => ({ re: parts[0], im: parts[1], unit: z.unit });

const magnitude = ({ re, im }: Complex): number => Math.hypot(re, im);
const angle = ({ re, im }: Complex): number => (re === 0 && im === 0 ? raise('#DIV/0!') : Math.atan2(im, re));

function times(a: Complex, b: Complex): Complex {
  return { re: a.re * b.re - a.im * b.im, im: a.re * b.im + a.im * b.re, unit: commonUnit(a, b) };
}
function divided(a: Complex, b: Complex): Complex {
  const size = b.re ** 2 + b.im ** 2;
  if (size === 0) return raise('#NUM!');
  const unit = commonUnit(a, b);
  return { re: (a.re * b.re + a.im * b.im) / size, im: (a.im * b.re - a.re * b.im) / size, unit };
}
const plus = (a: Complex, b: Complex, sign = 1): Complex => ({
  re: a.re + sign * b.re,
  im: a.im + sign * b.im,
  unit: commonUnit(a, b),
});
/** A real number goes with either letter; two different letters do not go together. */
function commonUnit(a: Complex, b: Complex): 'i' | 'j' {
  if (a.im !== 0 && b.im !== 0 && a.unit !== b.unit) return raise('#VALUE!');
  return a.im !== 0 ? a.unit : b.im !== 0 ? b.unit : a.unit === 'j' ? 'j' : b.unit;
}
const ONE: Complex = { re: 1, im: 0, unit: 'i' };

function power(z: Complex, exponent: number): Complex {
  const size = magnitude(z);
  if (size === 0) return exponent > 0 ? over([0, 0], z) : raise('#NUM!');
  const [length, turn] = [size ** exponent, exponent * Math.atan2(z.im, z.re)];
  return over([length * Math.cos(turn), length * Math.sin(turn)], z);
}

const sine = (z: Complex) => over([Math.sin(z.re) * Math.cosh(z.im), Math.cos(z.re) * Math.sinh(z.im)], z);
const cosine = (z: Complex) => over([Math.cos(z.re) * Math.cosh(z.im), -Math.sin(z.re) * Math.sinh(z.im)], z);
const hyperbolicSine = (z: Complex) =>
  over([Math.sinh(z.re) * Math.cos(z.im), Math.cosh(z.re) * Math.sin(z.im)], z);
const hyperbolicCosine = (z: Complex) =>
  over([Math.cosh(z.re) * Math.cos(z.im), Math.sinh(z.re) * Math.sin(z.im)], z);
const logarithm = (z: Complex): Complex =>
  z.re === 0 && z.im === 0 ? raise('#NUM!') : over([Math.log(magnitude(z)), Math.atan2(z.im, z.re)], z);
const scaled = (z: Complex, factor: number) => over([z.re * factor, z.im * factor], z);

const map = (name: string, of: (z: Complex) => Complex) =>
  plain(name, 'f', (value) => write(of(read(value))));
const measure = (name: string, of: (z: Complex) => number) => plain(name, 'f', (value) => of(read(value)));

/** All arguments, of cells those that are not blank. */
const folded = (name: string, join: (a: Complex, b: Complex) => Complex): SheetFunction =>
  inContext(name, '(r)+', (context, ...args: Value[]) => {
    const all: Complex[] = [];
    for (const arg of args) {
      if (isSeveral(context, arg)) {
        context.each(arg, (value) => {
          if (value !== null && value !== '') all.push(read(value as Cell));
        });
      } else all.push(read(single(context, arg) as Cell));
    }
    return write(all.reduce((a, b) => join(a, b)));
  });

const isSeveral = (context: Context, value: Value): value is Reference | ArrayValue =>
  (value instanceof Reference || value instanceof ArrayValue) && context.array(value).size > 1;

export const complex: readonly SheetFunction[] = [
  plain('COMPLEX', 'fft?', (re, im, unit = 'i') =>
    unit === 'i' || unit === 'j' || unit === ''
      ? write({ re: strictNumber(re), im: strictNumber(im), unit: unit === 'j' ? 'j' : 'i' })
      : raise('#VALUE!'),
  ),
  measure('IMREAL', ({ re }) => re),
  measure('IMAGINARY', ({ im }) => im),
  measure('IMABS', magnitude),
  measure('IMARGUMENT', angle),
  map('IMCONJUGATE', (z) => over([z.re, -z.im], z)),
  folded('IMSUM', (a, b) => plus(a, b)),
  folded('IMPRODUCT', times),
  plain('IMSUB', 'ff', (a, b) => write(plus(read(a), read(b), -1))),
  plain('IMDIV', 'ff', (a, b) => write(divided(read(a), read(b)))),
  plain('IMPOWER', 'ff', (z, exponent) => write(power(read(z), strictNumber(exponent)))),
  map('IMSQRT', (z) => (magnitude(z) === 0 ? z : power(z, 0.5))),
  map('IMEXP', (z) => over([Math.exp(z.re) * Math.cos(z.im), Math.exp(z.re) * Math.sin(z.im)], z)),
  map('IMLN', logarithm),
  map('IMLOG10', (z) => scaled(logarithm(z), Math.LOG10E)),
  map('IMLOG2', (z) => scaled(logarithm(z), Math.LOG2E)),
  map('IMSIN', sine),
  map('IMCOS', cosine),
  map('IMTAN', (z) => divided(sine(z), cosine(z))),
  map('IMCOT', (z) => divided(cosine(z), sine(z))),
  map('IMSEC', (z) => divided(ONE, cosine(z))),
  map('IMCSC', (z) => divided(ONE, sine(z))),
  map('IMSINH', hyperbolicSine),
  map('IMCOSH', hyperbolicCosine),
  map('IMSECH', (z) => divided(ONE, hyperbolicCosine(z))),
  map('IMCSCH', (z) => divided(ONE, hyperbolicSine(z))),
];

import { bracketed } from './precedence';
import { OPERATORS } from './operators';
import type { Expr } from './tree';

const GREEK = new Set(
  'alpha beta gamma delta epsilon zeta eta theta kappa lambda mu nu xi pi rho sigma tau phi chi psi omega Delta Gamma Theta Lambda Sigma Phi Psi Omega'.split(
    ' ',
  ),
);

const glyph = (name: string): string => {
  if (GREEK.has(name)) return `\\${name}`;
  // `DT` is a difference of T.
  if (/^D[A-Za-z]$/.test(name)) return `\\Delta ${name.slice(1)}`;
  return name.length === 1 ? name : `\\mathrm{${name}}`;
};

/** `mu_s` is µ with index s, `F1` is F with index 1, `alpha` is the letter, `DT` is ΔT. */
export function symbolTex(name: string): string {
  const match = /^([A-Za-z]+?)(?:_(\w+)|(\d+))?$/.exec(name);
  if (!match) return `\\mathrm{${name.replace(/_/g, '\\_')}}`;
  const [, base = '', subscript, digits] = match;
  const index = subscript ?? digits;
  if (index === undefined) return glyph(base);
  return `${glyph(base)}_{${GREEK.has(index) ? `\\${index}` : /^\w$|^\d+$/.test(index) ? index : `\\mathrm{${index.replace(/_/g, ',')}}`}}`;
}

function numberTex(value: number): string {
  if (value === Math.PI) return '\\pi';
  const [mantissa = '', exponent] = String(value).split('e');
  return exponent === undefined ? mantissa : `${mantissa}\\times 10^{${Number(exponent)}}`;
}

/** What a printed value needs around it, which a symbol never does: a sign before it, or a unit under an exponent. */
function needsBrackets(
  text: string,
  arg: Expr,
  under: Extract<Expr, { type: 'op' }>,
  index: number,
): boolean {
  if (arg.type !== 'var' || text === symbolTex(arg.name)) return false;
  const isBase = under.op === 'pow' && index === 0 && !/^[\d.]+$/.test(text);
  return isBase || (text.startsWith('-') && OPERATORS[under.op].infix !== undefined);
}

/** An equation's TeX. `leaf` may print a variable otherwise, for example as its value. */
export function toTex(e: Expr, leaf: (name: string) => string = symbolTex): string {
  switch (e.type) {
    case 'num':
      return numberTex(e.value);
    case 'var':
      return leaf(e.name);
    case 'if':
      return `\\begin{cases} ${toTex(e.then, leaf)} & \\text{if } ${toTex(e.test, leaf)} \\\\ ${toTex(e.else, leaf)} & \\text{otherwise} \\end{cases}`;
    case 'op': {
      const { tex } = OPERATORS[e.op];
      // A fraction bar and a raised exponent bracket by themselves.
      const selfBracketing = (i: number): boolean => e.op === 'div' || (e.op === 'pow' && i === 1);
      return tex(
        e.args.map((arg, i) => {
          const text = toTex(arg, leaf);
          const base =
            e.op === 'pow' && i === 0 && (arg.type === 'if' || (arg.type === 'op' && !bracketed(e, i)));
          return !selfBracketing(i) &&
            (bracketed(e, i) || base || arg.type === 'if' || needsBrackets(text, arg, e, i))
            ? `\\left(${text}\\right)`
            : text;
        }),
      );
    }
  }
}

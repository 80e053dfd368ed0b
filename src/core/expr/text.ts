import { bracketed } from './precedence';
import { OPERATORS } from './operators';
import type { Expr } from './tree';

/** Prints an equation so that `parseEquation` reads the same tree back. */
export function toText(e: Expr): string {
  switch (e.type) {
    case 'num':
      return numberText(e.value);
    case 'var':
      return e.name;
    case 'if':
      return `(${toText(e.test)} ? ${toText(e.then)} : ${toText(e.else)})`;
    case 'op': {
      const { infix } = OPERATORS[e.op];
      if (!infix) return `${e.op}(${e.args.map(toText).join(', ')})`;
      const [a = '', b = ''] = e.args.map((arg, i) => {
        const text = toText(arg);
        return bracketed(e, i) ? `(${text})` : text;
      });
      if (e.op === 'neg') return `-${a}`;
      const tight = infix.precedence >= 5;
      return tight ? `${a}${infix.text}${b}` : `${a} ${infix.text} ${b}`;
    }
  }
}

function numberText(value: number): string {
  if (value === Math.PI) return 'pi';
  const text = String(value);
  return value < 0 ? `(${text})` : text;
}

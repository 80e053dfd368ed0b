import { OPERATORS } from './operators';
import type { Expr } from './tree';

/**
 * An equation in a worksheet's own functions. Every operation stands in brackets, since worksheets bind signs and
 * powers otherwise than books do (`-x^2`, `2^3^2`). `cell` gives the text that stands for a symbol.
 */
export function toNative(e: Expr, cell: (symbol: string) => string): string {
  switch (e.type) {
    case 'num':
      return nativeNumber(e.value);
    case 'var':
      return cell(e.name);
    case 'if':
      return `IF(${toNative(e.test, cell)},${toNative(e.then, cell)},${toNative(e.else, cell)})`;
    case 'op': {
      const text = OPERATORS[e.op].native(e.args.map((arg) => toNative(arg, cell)));
      return isCallText(text) ? text : `(${text})`;
    }
  }
}

/** A number as every spreadsheet program reads it; below zero in brackets. */
export function nativeNumber(value: number): string {
  if (value === Math.PI) return 'PI()';
  const text = String(value).replace('e+', 'E').replace('e', 'E');
  return value < 0 ? `(${text})` : text;
}

/** True for one call and nothing beside it: `SIN(x)`, not `SIGN(x)*ABS(x)`. */
function isCallText(text: string): boolean {
  const start = /^[A-Z]+\(/.exec(text)?.[0].length;
  if (start === undefined || !text.endsWith(')')) return false;
  let depth = 1;
  for (let at = start; at < text.length - 1; at++) {
    if (text[at] === '(') depth++;
    else if (text[at] === ')' && --depth === 0) return false;
  }
  return true;
}

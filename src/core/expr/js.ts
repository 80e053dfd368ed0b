import { OPERATORS } from './operators';
import type { Expr } from './tree';

/** An equation as JavaScript. `place` gives the text that stands for a symbol. */
export function toJs(e: Expr, place: (symbol: string) => string): string {
  switch (e.type) {
    case 'num':
      return e.value < 0 ? `(${e.value})` : String(e.value);
    case 'var':
      return place(e.name);
    case 'if':
      return `(${toJs(e.test, place)}!==0?${toJs(e.then, place)}:${toJs(e.else, place)})`;
    case 'op':
      return OPERATORS[e.op].js(e.args.map((arg) => toJs(arg, place)));
  }
}

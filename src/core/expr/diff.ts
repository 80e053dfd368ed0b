import { fold } from './fold';
import { OPERATORS } from './operators';
import { num, op, rewrite, variables, when, type Expr } from './tree';

/** An operator that has no derivative, such as a rounding. */
export class NoDerivative extends Error {
  override readonly name = 'NoDerivative';
}

const isNumber = (e: Expr | undefined, value: number): boolean => e?.type === 'num' && e.value === value;

/** Drops what the chain rule leaves behind: x + 0, 1·x, 0·x, x^1. Keeps the branch that a value takes. */
const tidy = (e: Expr): Expr =>
  rewrite(fold(e), (node) => {
    if (node.type === 'if') {
      const { then, else: otherwise } = node;
      return then.type === 'num' && otherwise.type === 'num' && then.value === otherwise.value ? then : node;
    }
    if (node.type !== 'op') return node;
    const [a, b] = node.args;
    if (!a) return node;
    switch (node.op) {
      case 'add':
        return isNumber(a, 0) && b ? b : isNumber(b, 0) ? a : node;
      case 'sub':
        return isNumber(b, 0) ? a : isNumber(a, 0) && b ? op('neg', b) : node;
      case 'mul':
        if (isNumber(a, 0) || isNumber(b, 0)) return num(0);
        return isNumber(a, 1) && b ? b : isNumber(b, 1) ? a : node;
      case 'div':
        return isNumber(a, 0) ? num(0) : isNumber(b, 1) ? a : node;
      case 'pow':
        return isNumber(b, 1) ? a : node;
      case 'neg':
        return isNumber(a, 0) ? num(0) : node;
      default:
        return node;
    }
  });

/** The derivative of an equation with respect to one of its symbols, exact. */
export function derivative(e: Expr, name: string): Expr {
  switch (e.type) {
    case 'num':
      return num(0);
    case 'var':
      return num(e.name === name ? 1 : 0);
    case 'if':
      // The condition decides the branch; at the very edge the derivative is that of the branch taken.
      return tidy(when(e.test, derivative(e.then, name), derivative(e.else, name)));
    case 'op': {
      if (!variables(e).has(name)) return num(0);
      const { partials } = OPERATORS[e.op];
      if (!partials) throw new NoDerivative(`${e.op} has no derivative`);
      const terms = partials(e.args).map((partial, i) =>
        op('mul', partial, derivative(e.args[i] ?? num(0), name)),
      );
      return tidy(terms.reduce((sum, term) => op('add', sum, term)));
    }
  }
}

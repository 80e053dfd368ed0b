import { OPERATORS } from './operators';
import type { Expr } from './tree';

/** Whether the argument at `index` of an infix operator must stand in brackets to keep its meaning. */
export function bracketed(parent: Extract<Expr, { type: 'op' }>, index: number): boolean {
  const outer = OPERATORS[parent.op].infix;
  const child = parent.args[index];
  if (!outer || child?.type !== 'op') return false;
  const inner = OPERATORS[child.op].infix;
  if (!inner) return false;
  if (inner.precedence !== outer.precedence) return inner.precedence < outer.precedence;
  if (outer.associative === 'none') return true;
  return outer.associative === 'left' ? index > 0 : index === 0;
}

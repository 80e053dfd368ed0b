import { OPERATORS } from './operators';
import { num, rewrite, type Expr } from './tree';

/** One constant side of a conjunction may settle it; a conditional with a constant test is one of its branches. */
function settled(node: Expr): Expr {
  if (node.type === 'if' && node.test.type === 'num') return node.test.value !== 0 ? node.then : node.else;
  if (node.type !== 'op' || (node.op !== 'and' && node.op !== 'or')) return node;
  const [a, b] = node.args;
  if (!a || !b) return node;
  const settles = node.op === 'and' ? 0 : 1;
  for (const [side, other] of [
    [a, b],
    [b, a],
  ] as const) {
    if (side.type === 'num') return (side.value !== 0 ? 1 : 0) === settles ? num(settles) : other;
  }
  return node;
}

/** Drops the branches that what was given can never take, and leaves the rest as the book writes it. */
export const prune = (e: Expr): Expr => rewrite(e, settled);

/** Works out everything that is constant. */
export const fold = (e: Expr): Expr =>
  rewrite(e, (node) => {
    const plain = settled(node);
    if (plain.type !== 'op' || !plain.args.every((arg) => arg.type === 'num')) return plain;
    const value = OPERATORS[plain.op].run(...plain.args.map((arg) => arg.value));
    // What has no value stays as written, so that the step that holds it can be named; so does a minus zero, which a
    // number cannot be printed as.
    return Number.isFinite(value) && !Object.is(value, -0) ? num(value) : plain;
  });

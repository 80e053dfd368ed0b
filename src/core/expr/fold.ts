import { OPERATORS } from './operators';
import { num, rewrite, type Expr } from './tree';

/** Works out what is constant and drops the branch of a conditional that can never be taken. */
export const fold = (e: Expr): Expr =>
  rewrite(e, (node) => {
    if (node.type === 'if' && node.test.type === 'num') return node.test.value !== 0 ? node.then : node.else;
    if (node.type !== 'op') return node;
    const [a, b] = node.args;
    if (node.args.every((arg) => arg.type === 'num')) {
      const value = OPERATORS[node.op].run(...node.args.map((arg) => arg.value));
      // What has no value stays as written, so that the step that holds it can be named; minus zero is zero.
      return Number.isFinite(value) ? num(value === 0 ? 0 : value) : node;
    }
    // One constant side of a conjunction may settle it: given(x) is such a constant.
    if ((node.op === 'and' || node.op === 'or') && a && b) {
      const settles = node.op === 'and' ? 0 : 1;
      for (const [side, other] of [
        [a, b],
        [b, a],
      ] as const) {
        if (side.type === 'num') return (side.value !== 0 ? 1 : 0) === settles ? num(settles) : other;
      }
    }
    return node;
  });

import { OPERATORS } from './operators';
import { raise } from './raise';
import type { Expr, OperatorName } from './tree';

/** Reads inputs and earlier steps from slots; no eval, so a strict content-security policy holds. */
export type Runner = (slots: Float64Array) => number;

type Slot = number;
// Every slot index is handed out by the compiler, so it is inside the array.
const at = (s: Float64Array, i: Slot): number => s[i] as number;

/** Named outright, so that an engine can put the operation in place of the call. */
const UNARY: Partial<Record<OperatorName, (x: Runner) => Runner>> = {
  neg: (x) => (s) => -x(s),
  sin: (x) => (s) => Math.sin(x(s)),
  cos: (x) => (s) => Math.cos(x(s)),
  tan: (x) => (s) => Math.tan(x(s)),
  atan: (x) => (s) => Math.atan(x(s)),
  sqrt: (x) => (s) => Math.sqrt(x(s)),
};

/** Specialised by what the two sides are: a slot or a constant saves a call each. */
function binary(name: OperatorName, a: Expr, b: Expr, slotOf: (name: string) => Slot): Runner | undefined {
  const ia = a.type === 'var' ? slotOf(a.name) : -1;
  const ib = b.type === 'var' ? slotOf(b.name) : -1;
  const fa = compile(a, slotOf);
  const fb = compile(b, slotOf);
  const ka = a.type === 'num' ? a.value : NaN;
  const kb = b.type === 'num' ? b.value : NaN;
  switch (name) {
    case 'add':
      if (ia >= 0 && ib >= 0) return (s) => at(s, ia) + at(s, ib);
      if (ia >= 0) return (s) => at(s, ia) + fb(s);
      if (ib >= 0) return (s) => fa(s) + at(s, ib);
      return (s) => fa(s) + fb(s);
    case 'sub':
      if (ia >= 0 && ib >= 0) return (s) => at(s, ia) - at(s, ib);
      if (a.type === 'num') return (s) => ka - fb(s);
      if (ia >= 0) return (s) => at(s, ia) - fb(s);
      if (ib >= 0) return (s) => fa(s) - at(s, ib);
      return (s) => fa(s) - fb(s);
    case 'mul':
      if (ia >= 0 && ib >= 0) return (s) => at(s, ia) * at(s, ib);
      if (a.type === 'num') return ib >= 0 ? (s) => ka * at(s, ib) : (s) => ka * fb(s);
      if (ia >= 0) return (s) => at(s, ia) * fb(s);
      if (ib >= 0) return (s) => fa(s) * at(s, ib);
      return (s) => fa(s) * fb(s);
    case 'div':
      if (ia >= 0 && ib >= 0) return (s) => at(s, ia) / at(s, ib);
      if (b.type === 'num') return ia >= 0 ? (s) => at(s, ia) / kb : (s) => fa(s) / kb;
      if (ia >= 0) return (s) => at(s, ia) / fb(s);
      if (ib >= 0) return (s) => fa(s) / at(s, ib);
      return (s) => fa(s) / fb(s);
    case 'pow':
      if (kb === 2 && ia >= 0) return (s) => at(s, ia) * at(s, ia);
      if (kb === 2) {
        return (s) => {
          const x = fa(s);
          return x * x;
        };
      }
      if (kb === 3) {
        return (s) => {
          const x = fa(s);
          return x * x * x;
        };
      }
      return (s) => raise(fa(s), fb(s));
    case 'max':
      return (s) => Math.max(fa(s), fb(s));
    case 'min':
      return (s) => Math.min(fa(s), fb(s));
    case 'lt':
      if (ia >= 0 && ib >= 0) return (s) => (at(s, ia) < at(s, ib) ? 1 : 0);
      return (s) => (fa(s) < fb(s) ? 1 : 0);
    case 'le':
      if (ia >= 0 && ib >= 0) return (s) => (at(s, ia) <= at(s, ib) ? 1 : 0);
      return (s) => (fa(s) <= fb(s) ? 1 : 0);
    case 'gt':
      if (ia >= 0 && ib >= 0) return (s) => (at(s, ia) > at(s, ib) ? 1 : 0);
      return (s) => (fa(s) > fb(s) ? 1 : 0);
    case 'ge':
      if (ia >= 0 && ib >= 0) return (s) => (at(s, ia) >= at(s, ib) ? 1 : 0);
      return (s) => (fa(s) >= fb(s) ? 1 : 0);
    case 'and':
      return (s) => (fa(s) !== 0 && fb(s) !== 0 ? 1 : 0);
    case 'or':
      return (s) => (fa(s) !== 0 || fb(s) !== 0 ? 1 : 0);
    default:
      return undefined;
  }
}

/** Turns a tree into nested closures over the slots. */
export function compile(e: Expr, slotOf: (name: string) => Slot): Runner {
  switch (e.type) {
    case 'num': {
      const { value } = e;
      return () => value;
    }
    case 'var': {
      const i = slotOf(e.name);
      return (s) => at(s, i);
    }
    case 'if': {
      const test = compile(e.test, slotOf);
      const yes = compile(e.then, slotOf);
      const no = compile(e.else, slotOf);
      return (s) => (test(s) !== 0 ? yes(s) : no(s));
    }
    case 'op':
      return compileOp(e, slotOf);
  }
}

function compileOp(e: Extract<Expr, { type: 'op' }>, slotOf: (name: string) => Slot): Runner {
  const [a, b] = e.args;
  const { run } = OPERATORS[e.op];
  if (a && b) {
    const special = binary(e.op, a, b, slotOf);
    if (special) return special;
    const fa = compile(a, slotOf);
    const fb = compile(b, slotOf);
    return (s) => run(fa(s), fb(s));
  }
  if (!a) throw new Error(`${e.op} without arguments`);
  const fa = compile(a, slotOf);
  return UNARY[e.op]?.(fa) ?? ((s) => run(fa(s)));
}

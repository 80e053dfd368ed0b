/** The compiler holds this list and the table in `operators.ts` equal. */
export type OperatorName =
  | 'or' | 'and' | 'not' | 'lt' | 'le' | 'gt' | 'ge'
  | 'add' | 'sub' | 'mul' | 'div' | 'neg' | 'pow'
  | 'sin' | 'cos' | 'tan' | 'asin' | 'acos' | 'atan'
  | 'sqrt' | 'cbrt' | 'exp' | 'ln' | 'erf' | 'abs' | 'max' | 'min' | 'ceil' | 'floor'; // prettier-ignore

/** An equation after parsing. Functions and operators are one node type: `operators.ts` knows how each is written. */
export type Expr =
  | { readonly type: 'num'; readonly value: number }
  | { readonly type: 'var'; readonly name: string }
  | { readonly type: 'op'; readonly op: OperatorName; readonly args: readonly Expr[] }
  | { readonly type: 'if'; readonly test: Expr; readonly then: Expr; readonly else: Expr };

export const num = (value: number): Expr => ({ type: 'num', value });
export const variable = (name: string): Expr => ({ type: 'var', name });
export const op = (name: OperatorName, ...args: readonly Expr[]): Expr => ({ type: 'op', op: name, args });
export const when = (test: Expr, then: Expr, otherwise: Expr): Expr => ({
  type: 'if',
  test,
  then,
  else: otherwise,
});

const children = (e: Expr): readonly Expr[] => {
  if (e.type === 'op') return e.args;
  if (e.type === 'if') return [e.test, e.then, e.else];
  return [];
};

/** Rebuilds a tree from the leaves up; `change` sees each node after its children. */
export function rewrite(e: Expr, change: (node: Expr) => Expr): Expr {
  if (e.type === 'op') return change({ ...e, args: e.args.map((a) => rewrite(a, change)) });
  if (e.type === 'if') {
    return change({
      type: 'if',
      test: rewrite(e.test, change),
      then: rewrite(e.then, change),
      else: rewrite(e.else, change),
    });
  }
  return change(e);
}

/** The names of all variables, in order of appearance. */
export function variables(e: Expr, found = new Set<string>()): Set<string> {
  if (e.type === 'var') found.add(e.name);
  for (const child of children(e)) variables(child, found);
  return found;
}

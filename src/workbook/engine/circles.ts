/** A formula and the formulas that its value goes into, by their ids. */
export interface Dependents {
  readonly id: number;
  readonly into: readonly number[];
}

/** The formulas that depend on their own result, and those that depend on such ones. */
export function circular(formulas: readonly Dependents[]): { inCircle: Set<number>; behind: Set<number> } {
  const into = new Map(formulas.map((one) => [one.id, one.into]));
  const reach = (from: Iterable<number>): Set<number> => {
    const seen = new Set<number>();
    const open = [...from];
    for (let id = open.pop(); id !== undefined; id = open.pop()) {
      for (const next of into.get(id) ?? []) {
        if (!seen.has(next)) {
          seen.add(next);
          open.push(next);
        }
      }
    }
    return seen;
  };
  // Taking away, again and again, what nothing left goes into leaves circles and what stands before them; only
  // those few are worth a walk of their own.
  const inCircle = new Set(endless(formulas).filter((id) => reach([id]).has(id)));
  return { inCircle, behind: new Set([...reach(inCircle)].filter((id) => !inCircle.has(id))) };
}

function endless(formulas: readonly Dependents[]): number[] {
  let left = formulas;
  for (;;) {
    const ids = new Set(left.map(({ id }) => id));
    const kept = left.filter(({ into }) => into.some((id) => ids.has(id)));
    if (kept.length === left.length) return [...ids];
    left = kept;
  }
}

/** A plan whose names make way for those that a workbook has. */
import { isCall, tokenize } from '../cells/formulaTokens';
import type { Ground } from './ground';
import { freeName } from './names';
import type { FormPlan, PlannedRule } from './plan';

/** Takes its own names for free; those of the ground get a number, in every formula of the plan as well. */
export function withFreeNames(
  plan: FormPlan,
  ground: Pick<Ground, 'isTaken'>,
  /** What stands for a name that is not the plan's own. */
  others: ReadonlyMap<string, string> = new Map(),
): FormPlan {
  const own = new Set(plan.names.map(({ name }) => name.toLowerCase()));
  const given = new Set<string>();
  const texts = new Map(others);
  for (const { name } of plan.names) {
    const free = freeName(
      name,
      (one) =>
        ground.isTaken(one) || given.has(one.toLowerCase()) || (one !== name && own.has(one.toLowerCase())),
    );
    given.add(free.toLowerCase());
    if (free !== name) texts.set(name, free);
  }
  if (texts.size === 0) return plan;
  const renamed = (formula: string): string => {
    const tokens = tokenize(formula);
    return tokens
      .map(({ kind, text }, at) =>
        kind === 'name' && !isCall(tokens, at) ? (texts.get(text) ?? text) : text,
      )
      .join('');
  };
  const renamedRule = ({ takes, ...rule }: PlannedRule): PlannedRule => ({
    ...rule,
    takes: 'accepts' in takes ? { accepts: renamed(takes.accepts) } : takes,
  });
  return {
    ...plan,
    cells: plan.cells.map((cell) =>
      cell.formula === undefined ? cell : { ...cell, formula: renamed(cell.formula) },
    ),
    rules: plan.rules.map(renamedRule),
    names: plan.names.map(({ name, area }) => ({ name: texts.get(name) ?? name, area })),
  };
}

import { tokenize } from '../cells/formulaTokens';
import type { DefinedName } from '../package/model';

/** What a formula says together with the names in it: these may stand for formulas of their own. */
export class NamedFormulas {
  /** A name may stand for something else on each sheet. */
  private readonly byName = new Map<string, DefinedName[]>();

  constructor(names: readonly DefinedName[]) {
    for (const one of names) {
      const key = one.name.toLowerCase();
      this.byName.set(key, [...(this.byName.get(key) ?? []), one]);
    }
  }

  /** The names in a formula, and those in what they stand for. */
  namesIn(formula: string): ReadonlySet<DefinedName> {
    const found = new Set<DefinedName>();
    if (this.byName.size === 0) return found;
    const open = [formula];
    for (let text = open.pop(); text !== undefined; text = open.pop()) {
      for (const token of tokenize(text)) {
        if (token.kind !== 'name') continue;
        for (const one of this.byName.get(token.text.toLowerCase()) ?? []) {
          if (found.has(one)) continue;
          found.add(one);
          open.push(one.formula);
        }
      }
    }
    return found;
  }

  /** A formula and what its names stand for. */
  textsOf(formula: string): readonly string[] {
    return [formula, ...[...this.namesIn(formula)].map((one) => one.formula)];
  }
}

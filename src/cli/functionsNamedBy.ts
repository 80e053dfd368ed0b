import { NAMESPACE } from '../cells/namespace';
import type { WorksheetFunction } from '../call/worksheetFunction';
import type { Definition } from '../core/define';

const NAMED = new RegExp(`\\b${NAMESPACE}\\.((\\w+)\\.[\\w.]+)`, 'gi');

/**
 * The functions of the families that formulas name, so that one formula does not wait for the whole catalogue; undefined
 * where these are not enough, as for functions about functions.
 */
export async function functionsNamedBy(
  formulas: readonly string[],
): Promise<readonly WorksheetFunction[] | undefined> {
  const named = formulas.flatMap((formula) => [...formula.toUpperCase().matchAll(NAMED)]);
  const [{ worksheetFunctionsOf }, ...families] = await Promise.all([
    import('../call/worksheet'),
    ...[...new Set(named.map(([, , family = '']) => family))].map(familyOf),
  ]);
  const found = families.flat().flatMap(worksheetFunctionsOf);
  const ids = new Set(found.map(({ id }) => id));
  return named.every(([, id = '']) => ids.has(id)) ? found : undefined;
}

/** Nothing where there is no such family. */
async function familyOf(name: string): Promise<readonly Definition[]> {
  const family = name.toLowerCase();
  try {
    const module = (await import(`../catalogue/${family}/index.ts`)) as Record<string, readonly Definition[]>;
    return module[family] ?? [];
  } catch {
    return [];
  }
}

import { NAMESPACE } from '../cells/namespace';
import type { WorksheetFunction } from '../call/worksheetFunction';

/** The functions that a formula calls, in the order it names them; what stands in quotes is no call. */
export function functionsIn(
  formula: string,
  functions: readonly WorksheetFunction[],
): readonly WorksheetFunction[] {
  const called = [...formula.replace(/"(?:[^"]|"")*"/g, '""').matchAll(CALL)].map(([, id]) =>
    id?.toUpperCase(),
  );
  const found = called.flatMap((id) => functions.find((fn) => fn.id === id) ?? []);
  return [...new Set(found)];
}

const CALL = new RegExp(`\\b${NAMESPACE}\\.([A-Z0-9.]+)(?=\\()`, 'gi');

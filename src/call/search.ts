import { familyWords } from '../catalogue/words';
import type { FamilyWords } from '../core/familyWords';
import { searchDocuments, searchOf, type SearchDocument } from '../derive/search';
import { toolWords } from './tools/words';
import { isListed, type FunctionWords } from '../derive/words';

/** What every family of functions is for, in the order of the catalogue. */
export const families: Readonly<Record<string, FamilyWords>> = { ...familyWords, ...toolWords };

export const documentsOf = (functions: readonly FunctionWords[]): SearchDocument[] =>
  searchDocuments(functions.filter(isListed), families);

/** The functions that a search means, best first; all in their order where it has no words. */
export function functionSearch<F extends FunctionWords>(
  functions: readonly F[],
): (text: string) => readonly F[] {
  const search = searchOf(documentsOf(functions));
  const byId = new Map(functions.map((fn) => [fn.id, fn]));
  return (text) => search(text).flatMap((id) => byId.get(id) ?? []);
}

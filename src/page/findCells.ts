import type { CellValue } from '../cells/value';

export interface Search {
  readonly text: string;
  /** Also in formulas, not in values alone. */
  readonly inFormulas: boolean;
  readonly matchesCase: boolean;
  /** The whole cell is what is searched for. */
  readonly isWhole: boolean;
}

export interface Searched {
  readonly value: CellValue;
  readonly formula?: string;
  /** The value in its number format. */
  readonly shown: () => string;
}

/** What is searched in a cell: the formula where formulas are; else the value, as it is and as it is shown. */
function* textsOf({ value, formula, shown }: Searched, { inFormulas }: Search): Generator<string> {
  if (inFormulas && formula !== undefined) {
    yield `=${formula}`;
    return;
  }
  if (typeof value === 'string' || typeof value === 'number') yield String(value);
  if (value !== null && typeof value !== 'string') yield shown();
}

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

const patternOf = ({ text, matchesCase, isWhole }: Search): RegExp =>
  new RegExp(isWhole ? `^${escaped(text)}$` : escaped(text), matchesCase ? 'gu' : 'giu');

function foundIn(cell: Searched, search: Search): string | undefined {
  if (search.text === '') return undefined;
  for (const text of textsOf(cell, search)) if (patternOf(search).test(text)) return text;
  return undefined;
}

export const isFound = (cell: Searched, search: Search): boolean => foundIn(cell, search) !== undefined;

/** What the cell holds afterwards, as it would be typed; undefined where a formula's result alone has the text. */
export function replaced(cell: Searched, search: Search, by: string): string | undefined {
  if (cell.formula !== undefined && !search.inFormulas) return undefined;
  return foundIn(cell, search)?.replace(patternOf(search), () => by);
}

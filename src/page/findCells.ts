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
}

/** What is searched in a cell: the formula where formulas are, else the value. */
const textOf = ({ value, formula }: Searched, { inFormulas }: Search): string =>
  inFormulas && formula !== undefined ? `=${formula}` : value === null ? '' : String(value);

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

const patternOf = ({ text, matchesCase, isWhole }: Search): RegExp =>
  new RegExp(isWhole ? `^${escaped(text)}$` : escaped(text), matchesCase ? 'gu' : 'giu');

export const isFound = (cell: Searched, search: Search): boolean =>
  search.text !== '' && patternOf(search).test(textOf(cell, search));

/** What the cell holds afterwards, as it would be typed; undefined where a formula's result alone has the text. */
export function replaced(cell: Searched, search: Search, by: string): string | undefined {
  if (cell.formula !== undefined && !search.inFormulas) return undefined;
  return textOf(cell, search).replace(patternOf(search), () => by);
}

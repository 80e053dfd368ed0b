/** What the rule of a cell says of an entry, as the workbook's author wrote it. */
import { areaContains } from '../cells/address';
import { CellError, type CellValue, type Matrix } from '../cells/value';
import { numberText } from '../core/format';
import type { Sheet, Validation } from '../package/model';
import type { CellPlace } from '../sheet/book';
import { accepts, formulasAt } from './entryRules';

/** Works out a formula as if it stood in a cell. */
export type Evaluate = (formula: string, place: CellPlace) => Matrix;

/** What is said of an entry that the rule does not hold for; only `stop` keeps it out. */
export interface EntryAnswer {
  readonly style: 'stop' | 'warning' | 'information';
  readonly text: string;
}

export const entryRuleOf = ({ validations }: Sheet, row: number, column: number): Validation | undefined =>
  validations.find(
    ({ kind, areas }) => kind !== 'none' && areas.some((area) => areaContains(area, row, column)),
  );

/** What a list offers; undefined for rules of other kinds, and for a list that cannot be worked out. */
export function choicesOf(
  rule: Validation,
  place: CellPlace,
  evaluate: Evaluate,
): readonly CellValue[] | undefined {
  if (rule.kind !== 'list') return undefined;
  if (rule.choices) return rule.choices;
  const [list] = formulasAt(rule, place);
  const offered = (list === undefined ? [] : evaluate(list, place))
    .flat()
    .filter((one) => one !== null && one !== '');
  return offered.some((one) => one instanceof CellError) ? undefined : offered;
}

/** Undefined where the entry may stand, and where the rule has nothing to say of it. */
export function entryAnswer(
  rule: Validation,
  value: CellValue,
  place: CellPlace,
  evaluate: Evaluate,
): EntryAnswer | undefined {
  if (!rule.refusal || accepts(rule, place, value, (formula) => evaluate(formula, place))) return undefined;
  const { style, title, text } = rule.refusal;
  const words = [title, text].filter((one) => one !== '').join(': ');
  return { style, text: words === '' ? `This cell takes ${boundsText(rule) ?? 'other values'}.` : words };
}

const WORDS: Readonly<Record<string, (first: string, second: string) => string>> = {
  between: (first, second) => `${first} to ${second}`,
  notBetween: (first, second) => `less than ${first} or more than ${second}`,
  equal: (first) => first,
  notEqual: (first) => `anything but ${first}`,
  greaterThan: (first) => `more than ${first}`,
  greaterThanOrEqual: (first) => `${first} or more`,
  lessThan: (first) => `less than ${first}`,
  lessThanOrEqual: (first) => `${first} or less`,
};

/** `0.1 to 5`, where the bounds are written out in the rule. */
export function boundsText({ kind, operator, formulas, choices }: Validation): string | undefined {
  if (choices) return choices.join(', ');
  const isNumber = kind === 'decimal' || kind === 'whole';
  const numbers = formulas.map(Number);
  if (!isNumber || numbers.length === 0 || numbers.some(Number.isNaN)) return undefined;
  const [first = '', second = ''] = numbers.map(numberText);
  const bounds = WORDS[operator]?.(first, second);
  return bounds === undefined ? undefined : `${kind === 'whole' ? 'a whole number, ' : ''}${bounds}`;
}

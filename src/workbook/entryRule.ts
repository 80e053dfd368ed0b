/** What the rule of a cell says of an entry, as the workbook's author wrote it. */
import { areaContains } from '../cells/address';
import { CellError, type CellValue, type Matrix } from '../cells/value';
import { numberText } from '../core/format';
import { shiftFormula } from '../package/shiftFormula';
import type { Sheet, Validation } from '../package/model';
import type { CellPlace } from '../sheet/book';

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
  const offered = formulaAt(rule, 0, place, evaluate)
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
  if (!rule.refusal || isAllowed(rule, value, place, evaluate)) return undefined;
  const { style, title, text } = rule.refusal;
  const words = [title, text].filter((one) => one !== '').join(': ');
  return { style, text: words === '' ? `This cell takes ${boundsText(rule) ?? 'other values'}.` : words };
}

function isAllowed(rule: Validation, value: CellValue, place: CellPlace, evaluate: Evaluate): boolean {
  if (value === null || value === '') return rule.allowBlank;
  const { kind } = rule;
  if (kind === 'list') {
    const offered = choicesOf(rule, place, evaluate);
    return offered === undefined || offered.some((one) => isSame(one, value));
  }
  // A rule of its own reads the cell, which holds the entry by now.
  if (kind === 'custom') return isTrue(formulaAt(rule, 0, place, evaluate)[0]?.[0] ?? null);
  const measured = kind === 'textLength' ? String(value).length : value;
  if (typeof measured !== 'number' || (kind === 'whole' && !Number.isInteger(measured))) return false;
  const bounds = [0, 1].map((i) => formulaAt(rule, i, place, evaluate)[0]?.[0] ?? null);
  const [first, second] = bounds;
  if (typeof first !== 'number') return true;
  return COMPARISONS[rule.operator]?.(measured, first, typeof second === 'number' ? second : first) ?? true;
}

const COMPARISONS: Readonly<Record<string, (value: number, first: number, second: number) => boolean>> = {
  between: (value, first, second) => value >= first && value <= second,
  notBetween: (value, first, second) => value < first || value > second,
  equal: (value, first) => value === first,
  notEqual: (value, first) => value !== first,
  greaterThan: (value, first) => value > first,
  greaterThanOrEqual: (value, first) => value >= first,
  lessThan: (value, first) => value < first,
  lessThanOrEqual: (value, first) => value <= first,
};

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

/** Relative references count from the first cell of the rule. */
function formulaAt(
  { formulas, areas }: Validation,
  index: number,
  place: CellPlace,
  evaluate: Evaluate,
): Matrix {
  const text = formulas[index];
  const [base] = areas;
  if (text === undefined || !base) return [[null]];
  return evaluate(shiftFormula(text, place.row - base.top, place.column - base.left), place);
}

const isTrue = (value: CellValue): boolean =>
  !(value instanceof CellError) && value !== null && typeof value !== 'string' && Boolean(value);

const isSame = (a: CellValue, b: CellValue): boolean =>
  typeof a === 'string' || typeof b === 'string'
    ? String(a).toLowerCase() === String(b).toLowerCase()
    : Object.is(a, b);

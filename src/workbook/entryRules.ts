/** Whether what was entered fits the workbook's own rules for entries, and what is said where it does not. */
import { areaContains } from '../cells/address';
import { CellError, type CellValue, type Matrix } from '../cells/value';
import type { Validation } from '../package/model';
import { shiftFormula } from '../package/shiftFormula';

export type Refusal = NonNullable<Validation['refusal']>;

type Evaluate = (formula: string) => Matrix;

interface Place {
  readonly row: number;
  readonly column: number;
}

/** What the rule of a cell says to a value; undefined where the value is good or nobody wants it looked at. */
export function refusalOfEntry(
  rules: readonly Validation[],
  { row, column }: Place,
  value: CellValue,
  evaluate: Evaluate,
): Refusal | undefined {
  const rule = rules.find(({ areas }) => areas.some((area) => areaContains(area, row, column)));
  if (!rule?.refusal || accepts(rule, { row, column }, value, evaluate)) return undefined;
  const { refusal } = rule;
  return {
    style: refusal.style,
    title: refusal.title || 'This entry does not fit',
    text: refusal.text || `${inWords(rule)}.`,
  };
}

/** The rule's formulas as they stand for a cell: relative references count from the rule's first cell. */
export function formulasAt(
  { formulas, areas: [base] }: Validation,
  { row, column }: Place,
): readonly string[] {
  return base ? formulas.map((one) => shiftFormula(one, row - base.top, column - base.left)) : [];
}

/** Whether a value fits the rule of its cell; a rule that cannot be calculated keeps nothing out. */
export function accepts(rule: Validation, place: Place, value: CellValue, evaluate: Evaluate): boolean {
  if (value === null || value === '') return rule.allowBlank;
  const formulas = formulasAt(rule, place);
  switch (rule.kind) {
    case 'none':
      return true;
    case 'list':
      return rule.choices
        ? rule.choices.some((choice) => choice === textOf(value))
        : isAmong(evaluate(formulas[0] ?? ''), value);
    case 'custom':
      return holds(evaluate(formulas[0] ?? '')[0]?.[0] ?? null);
    case 'textLength':
      return isWithin(rule.operator, textOf(value).length, bounds(formulas, evaluate));
    default:
      return (
        typeof value === 'number' &&
        (rule.kind !== 'whole' || Number.isInteger(value)) &&
        isWithin(rule.operator, value, bounds(formulas, evaluate))
      );
  }
}

const textOf = (value: CellValue): string =>
  typeof value === 'boolean' ? String(value).toUpperCase() : String(value);

/** Lists of cells are read without regard to case, lists in the rule itself with it, as spreadsheet programs do. */
const isAmong = (cells: Matrix, value: CellValue): boolean =>
  cells.flat().some((one) => one !== null && textOf(one).toLowerCase() === textOf(value).toLowerCase());

/** What cannot be calculated here refuses nothing. */
function holds(value: CellValue): boolean {
  if (value instanceof CellError) return value.code === '#NAME?';
  return typeof value === 'string' ? value.toUpperCase() === 'TRUE' : Boolean(value);
}

const bounds = (formulas: readonly string[], evaluate: Evaluate): (number | undefined)[] =>
  formulas.map((formula) => {
    const value = evaluate(formula)[0]?.[0] ?? 0;
    return typeof value === 'number' ? value : undefined;
  });

const COMPARISONS: Readonly<Record<string, readonly [string, (value: number, a: number) => boolean]>> = {
  equal: ['equal to', (value, a) => value === a],
  notEqual: ['other than', (value, a) => value !== a],
  greaterThan: ['greater than', (value, a) => value > a],
  greaterThanOrEqual: ['at least', (value, a) => value >= a],
  lessThan: ['less than', (value, a) => value < a],
  lessThanOrEqual: ['at most', (value, a) => value <= a],
};

/** A bound that is no number cannot be kept to, so it does not count. */
function isWithin(operator: string, value: number, [a, b]: readonly (number | undefined)[]): boolean {
  const between = (a === undefined || value >= a) && (b === undefined || value <= b);
  if (operator === 'between') return between;
  if (operator === 'notBetween') return a === undefined || b === undefined || !between;
  return a === undefined || (COMPARISONS[operator]?.[1](value, a) ?? true);
}

const KINDS: Readonly<Partial<Record<Validation['kind'], string>>> = {
  whole: 'A whole number',
  decimal: 'A number',
  date: 'A date',
  time: 'A time',
  textLength: 'A text whose length is',
};

/** The rule as a person would say it, without its stop. */
export function inWords({ kind, choices, operator, formulas: [a = '', b = ''] }: Validation): string {
  if (kind === 'none') return 'Anything';
  if (kind === 'list') return choices ? `One of: ${choices.join(', ')}` : `One of the entries of ${a}`;
  if (kind === 'custom') return `Entries for which ${a} is true`;
  const what = KINDS[kind] ?? 'A value';
  if (operator === 'between') return `${what} from ${a} to ${b}`;
  if (operator === 'notBetween') return `${what} not from ${a} to ${b}`;
  return `${what} ${COMPARISONS[operator]?.[0] ?? operator} ${a}`;
}

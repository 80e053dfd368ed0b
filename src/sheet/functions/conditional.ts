/** SUMIF and its kin: what stands where conditions hold. */
import { CellError } from '../../cells/value';
import type { ArrayValue } from '../values';
import { raise, Reference, type Scalar, type Value } from '../values';
import { criterion, type Criterion } from './criteria';
import { type Context, inContext } from './spec';

interface Condition {
  readonly cells: ArrayValue;
  readonly holds: Criterion;
}

/** Cells and conditions alternate; all areas of one size. */
function conditionsOf(context: Context, args: readonly (Value | Scalar)[]): Condition[] {
  const conditions: Condition[] = [];
  for (let i = 0; i + 1 < args.length; i += 2) {
    conditions.push({
      cells: context.array(args[i] as Value),
      holds: criterion(args[i + 1] as Scalar, context.date1904),
    });
  }
  const first = conditions[0]?.cells;
  if (conditions.some(({ cells }) => cells.rows !== first?.rows || cells.columns !== first.columns))
    return raise('#VALUE!');
  return conditions;
}

/** Visits where all conditions hold; once with a count for the rows below all that is stored. */
function eachMatch(
  context: Context,
  conditions: readonly Condition[],
  visit: (row: number, column: number, times: number) => void,
): void {
  const [first] = conditions;
  if (first === undefined) return;
  const { rows, columns } = first.cells;
  const stored = Math.max(...conditions.map(({ cells }) => cells.storedRows));
  context.tick(stored * columns);
  for (let row = 0; row < stored; row++) {
    for (let column = 0; column < columns; column++) {
      if (conditions.every(({ cells, holds }) => holds(cells.at(row, column)))) visit(row, column, 1);
    }
  }
  if (rows > stored && conditions.every(({ cells, holds }) => holds(cells.tail)))
    visit(stored, 0, (rows - stored) * columns);
}

/** The numbers of `from` where the conditions hold. */
function numbersWhere(context: Context, from: ArrayValue, conditions: readonly Condition[]): number[] {
  const numbers: number[] = [];
  eachMatch(context, conditions, (row, column, times) => {
    const read = (value: Scalar): void => {
      if (value instanceof CellError) raise(value);
      if (typeof value === 'number') numbers.push(value);
    };
    if (times === 1) read(from.at(row, column));
    else
      for (let r = row; r < from.storedRows; r++) for (let c = 0; c < from.columns; c++) read(from.at(r, c));
  });
  return numbers;
}

const manyConditions = (name: string, measure: (numbers: readonly number[]) => number) =>
  inContext(name, 'r(rv)+', (context, from, ...args) => {
    const conditions = conditionsOf(context, args);
    const cells = context.array(from);
    const first = conditions[0]?.cells;
    if (cells.rows !== first?.rows || cells.columns !== first.columns) return raise('#VALUE!');
    return measure(numbersWhere(context, cells, conditions));
  });

/** The area to add up takes its size from the cells that are tested. */
const oneCondition = (name: string, measure: (numbers: readonly number[]) => number) =>
  inContext(name, 'rvr?', (context, tested, wanted, from) => {
    const conditions = conditionsOf(context, [tested, wanted]);
    const { rows, columns } = (conditions[0] as Condition).cells;
    const cells = from === undefined ? tested : resized(from, rows, columns);
    return measure(numbersWhere(context, context.array(cells), conditions));
  });

function resized(from: Value, rows: number, columns: number): Value {
  const area = from instanceof Reference ? from.areas[0] : undefined;
  if (area === undefined) return from;
  return new Reference([{ ...area, bottom: area.top + rows - 1, right: area.left + columns - 1 }]);
}

const total = (numbers: readonly number[]): number => numbers.reduce((sum, value) => sum + value, 0);
const average = (numbers: readonly number[]): number =>
  numbers.length === 0 ? raise('#DIV/0!') : total(numbers) / numbers.length;
const best = (pick: (a: number, b: number) => number) => (numbers: readonly number[]) =>
  numbers.length === 0 ? 0 : numbers.reduce((a, b) => pick(a, b));

const count = (name: string, takes: 'rv' | '(rv)+') =>
  inContext(name, takes, (context, ...args) => {
    let found = 0;
    eachMatch(context, conditionsOf(context, args), (_row, _column, times) => (found += times));
    return found;
  });

export const conditional = [
  oneCondition('SUMIF', total),
  oneCondition('AVERAGEIF', average),
  count('COUNTIF', 'rv'),
  count('COUNTIFS', '(rv)+'),
  manyConditions('SUMIFS', total),
  manyConditions('AVERAGEIFS', average),
  manyConditions('MAXIFS', best(Math.max)),
  manyConditions('MINIFS', best(Math.min)),
];

/** Functions over the rows of a table that meet conditions written in cells. */
import { CellError } from '../../cells/value';
import { toText } from '../coerce';
import type { ArrayValue } from '../values';
import { Keep, raise, type Scalar } from '../values';
import { type Criterion, criterion } from './criteria';
import { type Context, inContext } from './spec';
import { variance } from './statistics';
import { mean, sum } from './sums';

const heading = (value: Scalar): string =>
  value instanceof CellError ? raise(value) : toText(value).toLowerCase();

function columnOf(table: ArrayValue, field: Exclude<Scalar, CellError>): number {
  if (typeof field === 'number' || typeof field === 'boolean') {
    const column = Math.trunc(Number(field)) - 1;
    return column >= 0 && column < table.columns ? column : raise('#VALUE!');
  }
  if (typeof field !== 'string') return raise('#VALUE!');
  const column = headings(table).indexOf(field.toLowerCase());
  return column < 0 ? raise('#VALUE!') : column;
}
const headings = (table: ArrayValue): string[] =>
  Array.from({ length: table.columns }, (_, column) => heading(table.at(0, column)));

type Rule = readonly { readonly column: number; readonly holds: Criterion }[];

/** A row meets the conditions if it meets all of one of their rows. */
function rulesOf(context: Context, table: ArrayValue, conditions: ArrayValue): Rule[] {
  const names = headings(table);
  const columns = Array.from({ length: conditions.columns }, (_, i) =>
    names.indexOf(heading(conditions.at(0, i))),
  );
  const rules: Rule[] = [];
  for (let row = 1; row < conditions.rows; row++) {
    rules.push(
      columns.flatMap((column, i) => {
        const wanted = conditions.at(row, i);
        if (wanted === null) return [];
        if (column < 0) throw new Keep('a condition that is a formula over the rows of a table');
        return [{ column, holds: criterion(beginning(wanted), context.date1904) }];
      }),
    );
  }
  return rules.length === 0 ? raise('#VALUE!') : rules;
}

/** Plain text asks here for what begins with it. */
const beginning = (wanted: Scalar): Scalar =>
  typeof wanted === 'string' &&
  !/^[=<>]/.test(wanted) &&
  !Number.isFinite(Number(wanted)) &&
  !/^(true|false)$/i.test(wanted)
    ? `${wanted}*`
    : wanted;

function rowsOf(context: Context, table: ArrayValue, conditions: ArrayValue): number[] {
  if (table.rows < 2) return raise('#VALUE!');
  const rules = rulesOf(context, table, conditions);
  const rows: number[] = [];
  for (let row = 1; row < table.storedRows; row++) {
    if (rules.some((rule) => rule.every(({ column, holds }) => holds(table.at(row, column))))) rows.push(row);
  }
  return rows;
}

function cellsOf(
  context: Context,
  table: ArrayValue,
  field: Exclude<Scalar, CellError>,
  conditions: ArrayValue,
): Scalar[] {
  const column = columnOf(table, field);
  return rowsOf(context, table, conditions).map((row) => table.at(row, column));
}

const numbers = (cells: readonly Scalar[]): number[] =>
  cells.flatMap((value) => {
    if (value instanceof CellError) raise(value);
    return typeof value === 'number' ? [value] : [];
  });

const ofNumbers = (name: string, measure: (values: readonly number[]) => number) =>
  inContext(name, 'asa', (context, table, field, conditions) =>
    measure(numbers(cellsOf(context, table, field, conditions))),
  );

const count = (name: string, isCounted: (value: Scalar) => boolean) =>
  inContext(name, 'asa', (context, table, field, conditions) =>
    field === null
      ? rowsOf(context, table, conditions).length
      : cellsOf(context, table, field, conditions).filter(isCounted).length,
  );

export const database = [
  count('DCOUNT', (value) => typeof value === 'number'),
  count('DCOUNTA', (value) => value !== null),
  ofNumbers('DSUM', sum),
  ofNumbers('DAVERAGE', mean),
  ofNumbers('DPRODUCT', (values) => (values.length === 0 ? 0 : values.reduce((a, b) => a * b, 1))),
  ofNumbers('DMAX', (values) => (values.length === 0 ? 0 : values.reduce((a, b) => Math.max(a, b)))),
  ofNumbers('DMIN', (values) => (values.length === 0 ? 0 : values.reduce((a, b) => Math.min(a, b)))),
  ofNumbers('DVAR', variance(1)),
  ofNumbers('DVARP', variance(0)),
  ofNumbers('DSTDEV', (values) => Math.sqrt(variance(1)(values))),
  ofNumbers('DSTDEVP', (values) => Math.sqrt(variance(0)(values))),
  inContext('DGET', 'asa', (context, table, field, conditions) => {
    const found = cellsOf(context, table, field, conditions);
    if (found.length === 0) return raise('#VALUE!');
    return found.length > 1 ? raise('#NUM!') : (found[0] ?? null);
  }),
];

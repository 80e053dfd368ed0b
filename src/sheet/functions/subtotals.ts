/** SUBTOTAL and AGGREGATE: other functions over what is shown, or without what is in error. */
import { CellError } from '../../cells/value';
import { ArrayValue, raise, Reference, type Scalar, type Value } from '../values';
import { toNumber } from '../coerce';
import { inContext, type Context, type SheetFunction } from './spec';
import { statistics } from './statistics';
import { sums } from './sums';

/** By their number, 1 to 19; the first eleven are SUBTOTAL's too. */
const NAMES = [
  'AVERAGE',
  'COUNT',
  'COUNTA',
  'MAX',
  'MIN',
  'PRODUCT',
  'STDEV.S',
  'STDEV.P',
  'SUM',
  'VAR.S',
  'VAR.P',
  'MEDIAN',
  'MODE.SNGL',
  'LARGE',
  'SMALL',
  'PERCENTILE.INC',
  'QUARTILE.INC',
  'PERCENTILE.EXC',
  'QUARTILE.EXC',
] as const;
const WITH_K = 14;
const SUBTOTALS = 11;

const byName = new Map<string, SheetFunction>([...sums, ...statistics].map((one) => [one.name, one]));

interface Leaves {
  /** Rows hidden by hand; those that a filter hides. */
  readonly hidden: boolean;
  readonly filtered: boolean;
  readonly errors: boolean;
  /** Cells that are subtotals themselves. */
  readonly nested: boolean;
}

const NESTED = /(?:^|[^\w.])(?:SUBTOTAL|AGGREGATE)\(/i;

/** The cells that count, in one column. */
function counting(context: Context, value: Value, leaves: Leaves): ArrayValue {
  const cells: Scalar[] = [];
  const see = (cell: Scalar) => {
    if (cell !== null && !(leaves.errors && cell instanceof CellError)) cells.push(cell);
  };
  if (!(value instanceof Reference)) context.each(value, see);
  else
    for (const area of value.areas) {
      const array = context.array(new Reference([area]));
      for (let row = 0; row < array.storedRows; row++) {
        const how = context.workbook.hiddenRow(area.sheet, area.top + row);
        if ((how === 'hidden' && leaves.hidden) || (how === 'filtered' && leaves.filtered)) continue;
        for (let column = 0; column < array.columns; column++) {
          const cell = array.at(row, column);
          if (cell === null) continue;
          const text =
            leaves.nested && context.workbook.formulaAt(area.sheet, area.top + row, area.left + column);
          if (!(text && NESTED.test(text))) see(cell);
        }
      }
    }
  return new ArrayValue(cells.length, 1, cells);
}

function apply(context: Context, number: number, args: readonly Value[]): Value {
  const spec = byName.get(NAMES[number - 1] ?? '');
  return spec ? spec.call(context, args) : raise('#VALUE!');
}

export const subtotals = [
  inContext('SUBTOTAL', 'n(r)+', (context, code, ...ranges) => {
    const number = Math.trunc(code);
    const leavesHidden = number > 100;
    const which = leavesHidden ? number - 100 : number;
    if (which < 1 || which > SUBTOTALS || ranges.some((range) => !(range instanceof Reference))) {
      return raise('#VALUE!');
    }
    const leaves = { hidden: leavesHidden, filtered: true, errors: false, nested: true };
    return apply(
      context,
      which,
      ranges.map((range) => counting(context, range, leaves)),
    );
  }),
  inContext('AGGREGATE', 'nn(A)+', (context, code, options, ...args) => {
    const number = Math.trunc(code);
    const option = Math.trunc(options);
    if (number < 1 || number > NAMES.length || option < 0 || option > 7) return raise('#VALUE!');
    const isHidden = option % 2 === 1;
    const leaves = {
      hidden: isHidden,
      filtered: isHidden,
      errors: (option & 2) !== 0,
      nested: option < 4,
    };
    const [first = null, k] = args;
    if (number < WITH_K) {
      return apply(
        context,
        number,
        args.map((range) => counting(context, range, leaves)),
      );
    }
    if (k === undefined) return raise('#VALUE!');
    return apply(context, number, [counting(context, first, leaves), toNumber(context.array(k).at(0, 0))]);
  }),
];

import { fromSI } from '../../core/quantity';
import { CellError, type CellValue, type Matrix } from '../../cells/value';
import { anyUnit, dimensionWords, exampleUnit, type AnyUnit } from '../../core/anyUnit';
import { derived } from '../../core/define';
import { RATIO, sameDimension, type Dimension } from '../../core/dimension';
import { DimensionError, inferDimension } from '../../core/expr/dims';
import { EquationError, parseEquation } from '../../core/expr/parse';
import { compile } from '../../core/expr/run';
import type { Expr } from '../../core/expr/tree';
import { hasComma, splitNumber } from '../../core/readQuantity';
import { naming, Refusal } from '../../core/refusal';
import { PassedError } from '../readArgument';
import { parameter, type Tool } from './tool';

/** A symbol of the equation with its value in SI. */
export interface FormulaInput {
  readonly symbol: string;
  readonly si: number;
  readonly unit: AnyUnit;
}

export const unitFormula: Tool = {
  name: 'UNIT.FORMULA',
  late: true,
  summary: 'The value of an equation of your own, with its units checked.',
  parameters: [
    parameter('equation', 'The right side of the equation as text, such as "F/(pi/4*d^2)"'),
    parameter(
      'inputs',
      'Rows of two or three columns: symbol, value, unit. A value may bring its own unit: "50 N"',
    ),
    parameter('unit', 'Unit of the result. If left out: the result must be a pure number', {
      optional: true,
    }),
  ],
  example: 'UNIT.FORMULA("F/(pi/4*d^2)",{"F",500,"lbf";"d",0.25,"in"},"psi")',
  sources: [derived('your own equation; the units are converted by their exact factors')],
  notes: [
    'Write every multiplication with its sign. There are + - * / ^, comparisons, and, or, condition ? one : other, pi, sqrt, sin, cos, tan, asin, acos, atan, exp, ln, abs, min, max.',
    'What is added or compared must measure the same, and a sine or an exponent takes a pure number or an angle.',
    'A temperature in °C or °F is a point on the scale. For a difference write K or Δ°C.',
    'Units may be products of known ones: in^4, lbf/in, kg·m².',
  ],
  cautions: ['Nothing but the units of your equation is checked: not its range, not its source.'],
  related: ['UNIT.CONVERT', 'SHOW.WORK'],
  run: (args): Matrix => {
    const text = args.text('equation');
    const inputs = readRows(args.range('inputs'));
    const unitText = args.rangeIfGiven('unit') ? args.cell('unit') : null;
    const target = naming('unit', () => readUnit(unitText));
    return [[valueOf(equationOf(text, inputs), inputs, target, unitText)]];
  },
};

const SYMBOL = /^[\p{L}_][\p{L}\p{N}_]*$/u;
/** Signs of print that the keyboard has none of. */
const SIGNS: Readonly<Record<string, string>> = {
  '·': '*',
  '×': '*',
  '÷': '/',
  '−': '-',
  '²': '^2',
  '³': '^3',
  π: 'pi',
  '≤': '<=',
  '≥': '>=',
};

export function readRows(range: Matrix): FormulaInput[] {
  return naming('inputs', () => {
    const columns = range[0]?.length ?? 0;
    if (columns < 2 || columns > 3)
      throw new Refusal(
        `has ${columns === 1 ? '1 column' : `${columns} columns`}; it takes symbol, value and, if wanted, unit`,
      );
    const inputs = range.flatMap(([symbol = null, value = null, unit = null]): FormulaInput[] => {
      if (symbol instanceof CellError) throw new PassedError(symbol);
      if (symbol === null || symbol === '') return [];
      return [readRow(String(symbol).trim(), value, unit)];
    });
    const twice = inputs.find(({ symbol }, i) => inputs.findIndex((one) => one.symbol === symbol) !== i);
    if (twice) throw new Refusal(`names ${twice.symbol} more than once`);
    return inputs;
  });
}

function readRow(symbol: string, value: CellValue, unitCell: CellValue): FormulaInput {
  if (!SYMBOL.test(symbol))
    throw new Refusal(`names "${symbol}", which is no symbol: letters, digits and _ only`);
  if (symbol === 'pi') throw new Refusal('names pi, which is the constant; take another symbol');
  if (value instanceof CellError) throw new PassedError(value);
  if (value === null || value === '') throw new Refusal(`has no value for ${symbol}`);
  const unit = readUnit(unitCell, symbol);
  if (typeof value === 'number') return { symbol, si: value * unit.factor + unit.offset, unit };
  const split = typeof value === 'string' ? splitNumber(value) : undefined;
  if (!split || !Number.isFinite(split.value))
    throw new Refusal(`has ${JSON.stringify(value)} for ${symbol}; it takes a number`);
  if (hasComma(String(value)))
    throw new Refusal(`has "${String(value)}" for ${symbol}, which has a comma: decimals take a point`);
  const own = split.rest === '' ? unit : readUnit(split.rest, symbol);
  const hasBoth = split.rest !== '' && unitCell !== null && unitCell !== '';
  if (hasBoth && !sameDimension(own.dimension, unit.dimension))
    throw new Refusal(`has "${String(value)}" for ${symbol}, which is no ${String(unitCell)}`);
  return { symbol, si: split.value * own.factor + own.offset, unit: own };
}

function readUnit(cell: CellValue, symbol?: string): AnyUnit {
  if (cell instanceof CellError) throw new PassedError(cell);
  const text = cell === null ? '' : String(cell);
  const unit = typeof cell === 'boolean' || typeof cell === 'number' ? undefined : anyUnit(text);
  if (unit) return unit;
  throw new Refusal(
    `${symbol === undefined ? 'is' : `has, for ${symbol},`} "${text}", which is no unit known here; such as in, mm, lbf, N, psi, in^4, lbf/in`,
  );
}

const written = (text: string): string =>
  text
    .trim()
    .replace(/^=/, '')
    .replace(/[·×÷−²³π≤≥]/g, (sign) => SIGNS[sign] ?? sign);

/** The symbols that an equation names, each once, in its order; throws an `EquationError` where it cannot be read. */
export function symbolsIn(text: string): string[] {
  const found = new Set<string>();
  parseEquation(written(text), (name) => found.add(name).has(name));
  return [...found];
}

/** The equation as a tree, its symbols and dimensions checked. */
export function equationOf(
  text: string,
  inputs: readonly FormulaInput[],
): { readonly tree: Expr; readonly dimension: Dimension | 'any' } {
  const known = new Map(inputs.map((input) => [input.symbol, input]));
  return naming('equation', () => {
    try {
      const tree = parseEquation(written(text), (name) => known.has(name));
      const dimension = inferDimension(
        tree,
        (name) => known.get(name)?.unit.dimension ?? RATIO,
        dimensionWords,
      );
      return { tree, dimension };
    } catch (error) {
      if (error instanceof EquationError) {
        const unknown = /^unknown symbol (\S+) in /.exec(error.message)?.[1];
        if (unknown !== undefined)
          throw new Refusal(
            `names ${unknown}, which has no row in inputs; there are ${[...known.keys()].join(', ') || 'none'}`,
          );
        throw new Refusal(`cannot be read: ${error.message}`);
      }
      if (error instanceof DimensionError) throw new Refusal(`does not fit in its units: ${error.message}`);
      throw error;
    }
  });
}

function valueOf(
  { tree, dimension }: ReturnType<typeof equationOf>,
  inputs: readonly FormulaInput[],
  target: AnyUnit,
  unitText: CellValue,
): number {
  if (dimension !== 'any' && !sameDimension(dimension, target.dimension)) {
    const such = exampleUnit(dimension);
    const takes = such === undefined ? '' : `, such as "${such}"`;
    throw new Refusal(
      unitText === null || unitText === ''
        ? `is missing: the equation gives ${dimensionWords(dimension)}; name its unit${takes}`
        : `is "${String(unitText)}", a unit of ${dimensionWords(target.dimension)}; the equation gives ${dimensionWords(dimension)}${takes}`,
      'unit',
    );
  }
  const slots = Float64Array.from(inputs, ({ si }) => si);
  const si = compile(tree, (name) => inputs.findIndex(({ symbol }) => symbol === name))(slots);
  const value = fromSI(si, target);
  if (!Number.isFinite(value))
    throw new Refusal(
      'has no finite value for these inputs: look for a division by zero, or a root or logarithm of a number that has none',
      'equation',
    );
  return value;
}

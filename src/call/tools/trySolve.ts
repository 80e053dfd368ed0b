import { amountReader } from '../readArgument';
import { derived, inputsOf, published, type AnyInput, type Definition } from '../../core/define';
import { firstMet, JumpsOver } from '../../core/firstMet';
import { quantityText } from '../../core/format';
import type { Kind, System } from '../../core/quantity';
import { naming, Refusal } from '../../core/refusal';
import { NotBracketed } from '../../core/solve';
import type { CellValue, Matrix } from '../../cells/value';
import { findDefinition, inputIndex } from '../findDefinition';
import { present } from '../worksheet';
import { readInputs } from './inputsTable';
import { calculationOf, readAs, resultsOver, resultWith, type Calculation } from './oneCalculation';
import { FUNCTION, INPUTS, UNITS } from './parameters';
import { parameter, type Args, type Tool } from './tool';

/** More whole numbers than any mold has pins, and than a cell should try. */
const MOST_WHOLE = 100_000;
/** Of the target: two results that differ by less are one. */
const SAME = 1e-9;

export const trySolve: Tool = {
  name: 'TRY.SOLVE',
  summary: 'The value of one argument at which a function gives a target.',
  parameters: [
    FUNCTION,
    INPUTS,
    parameter('argument', 'Name of the argument to find'),
    parameter('target', 'The result wanted, in the result’s unit'),
    parameter('low', 'Lowest value of the argument to look at'),
    parameter('high', 'Highest value of the argument to look at'),
    UNITS,
  ],
  example: 'TRY.SOLVE("SEAT.CLEAR",{"lift",2;"draft",5},"draft",0.25,1,20,"in")',
  changes: [
    {
      basis: 2,
      says: 'Where the target holds on a stretch, or is met more than once, the value met first from low; before, any one of them.',
    },
  ],
  sources: [
    derived('The function itself between the two values'),
    published('ITP method: Oliveira and Takahashi, ACM Transactions on Mathematical Software 47 (2021) 5'),
  ],
  notes: [
    'The value met first from low, of several. Where the target holds on a stretch, such as a force that is 0 from some draft on, it is the end of the stretch that is met first.',
    'Where no value is found, the refusal says what the ends give. Whole numbers and words are tried one by one; for words, low and high are not looked at.',
    'The worksheet’s own goal seek does not work with functions of an add-in: use this one.',
  ],
  related: ['TRY.MATCH', 'TRY.TABLE', 'TRY.SWING'],
  run: (args): Matrix => {
    const definition = naming('function', () => findDefinition(args.text('function')));
    const units = args.units();
    const index = naming('argument', () => inputIndex(definition, args.text('argument')));
    const input = inputsOf(definition)[index] as AnyInput;
    const { reading } = input;
    switch (reading.as) {
      case 'quantity':
        return [[solveQuantity(args, definition, index, reading.kind, units)]];
      case 'choice':
        return [[solveWords(args, definition, index, reading.words, units)]];
      default:
        throw new Refusal(`is ${input.name}, which is neither a quantity nor one of a few words`, 'argument');
    }
  },
};

/** The calculation with the argument sought at its first value; it may be left out of inputs. */
function started(
  args: Args,
  definition: Definition,
  index: number,
  first: CellValue,
  units: System,
): { readonly calculation: Calculation; readonly target: number } {
  const input = inputsOf(definition)[index] as AnyInput;
  const rows = readInputs(definition, args.range('inputs'), 2).filter((row) => row.index !== index);
  const calculation = calculationOf(definition, [...rows, { index, input, cells: [first] }], units);
  const target = naming('target', () => amountReader(calculation.gives)(args.cell('target'), units));
  return { calculation, target: target as number };
}

function solveQuantity(
  args: Args,
  definition: Definition,
  index: number,
  kind: Kind,
  units: System,
): CellValue {
  const low = readAs(definition, index, args.cell('low'), units, 'low') as number;
  const high = readAs(definition, index, args.cell('high'), units, 'high') as number;
  if (low >= high) throw new Refusal(`is ${quantityText(high, kind, units)}; it must be above low`, 'high');
  const { calculation, target } = started(args, definition, index, args.cell('low'), units);
  const result = resultsOver(calculation, index);
  const text = (si: number): string => quantityText(si, calculation.gives, units);
  if (kind === 'count') return solveWhole(result, low, high, target, text);

  // The ends are asked for by the person, who must know why one has no value; between them the search passes by.
  const ends = [result(low), result(high)] as const;
  const off = (x: number): number | undefined => {
    try {
      return result(x) - target;
    } catch (error) {
      if (error instanceof Refusal) return undefined;
      throw error;
    }
  };
  try {
    return present(firstMet(off, low, high).x, kind, units);
  } catch (error) {
    if (error instanceof JumpsOver)
      throw new Refusal(
        `is ${text(target)}, which the result jumps over, at ${quantityText(error.at, kind, units)}`,
        'target',
      );
    if (!(error instanceof NotBracketed)) throw error;
    throw new Refusal(
      `is ${text(target)}, but ${definition.name} gives ${text(ends[0])} at low and ${text(ends[1])} at high`,
      'target',
    );
  }
}

function solveWhole(
  result: (x: number) => number,
  low: number,
  high: number,
  target: number,
  text: (si: number) => string,
): number {
  const [from, to] = [Math.ceil(low), Math.floor(high)];
  if (to - from > MOST_WHOLE)
    throw new Refusal(`is ${high}; at most ${MOST_WHOLE} whole numbers are tried`, 'high');
  let before: { readonly x: number; readonly off: number } | undefined;
  let passed = '';
  for (let x = from; x <= to; x++) {
    const off = result(x) - target;
    if (Math.abs(off) <= SAME * Math.abs(target)) return x;
    if (before && passed === '' && before.off < 0 !== off < 0)
      passed = `: ${before.x} gives ${text(before.off + target)}, ${x} gives ${text(off + target)}`;
    before = { x, off };
  }
  throw new Refusal(
    passed === ''
      ? `is ${text(target)}, which no whole number from ${from} to ${to} gives: the last gives ${text((before?.off ?? NaN) + target)}`
      : `is ${text(target)}, which no whole number gives${passed}`,
    'target',
  );
}

function solveWords(
  args: Args,
  definition: Definition,
  index: number,
  words: readonly string[],
  units: System,
): string {
  const { calculation, target } = started(args, definition, index, words[0] ?? '', units);
  const text = (si: number): string => quantityText(si, calculation.gives, units);
  const tried = words.map((word) => {
    try {
      return { word, result: resultWith(calculation, index, word) };
    } catch (error) {
      if (error instanceof Refusal) return { word, result: undefined };
      throw error;
    }
  });
  const found = tried.find(
    ({ result }) => result !== undefined && Math.abs(result - target) <= SAME * Math.abs(target),
  );
  if (found) return found.word;
  const gives = tried.map(({ word, result }) =>
    result === undefined ? `${word} is refused` : `${word} gives ${text(result)}`,
  );
  throw new Refusal(`is ${text(target)}, which no word gives: ${gives.join(', ')}`, 'target');
}

import fc from 'fast-check';
import type { CellValue } from '../../src/cells/value';
import { worksheetFunction } from '../../src/call/worksheet';
import { NAMESPACE } from '../../src/cells/namespace';
import { catalogue } from '../../src/catalogue';
import { boundsOf, amountSI } from '../../src/core/amount';
import { inputsOf, type AnyInput, type Definition } from '../../src/core/define';
import { fromSI, systemUnit, SYSTEMS, type System } from '../../src/core/quantity';
import type { CellDescription, WorkbookDescription } from '../../src/package/description';
import { columnLetters } from '../../src/cells/address';
import { checksOf } from '../support/checks';
import { argumentsOf } from '../support/runCheck';

/** One call with its arguments in cells of their own. */
export interface GeneratedCall {
  readonly definition: Definition;
  /** For each argument its cells, one under another; undefined where left out. */
  readonly cells: readonly (readonly CellValue[] | undefined)[];
}

export function callsOfChecks(): GeneratedCall[] {
  return catalogue.flatMap((definition) =>
    checksOf(definition).flatMap((check) =>
      SYSTEMS.filter((system) => (check.units ?? system) === system).map((system) => ({
        definition,
        cells: argumentsOf(definition, check, system).map((arg) => arg?.flat()),
      })),
    ),
  );
}

/** Evenly between the two, or evenly by factors where both are above zero. */
const random = (low: number, high: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: 1_000_000 }).map((n) => {
    const x = n / 1_000_000;
    return Number((low > 0 ? low * (high / low) ** x : low + (high - low) * x).toPrecision(6));
  });

function quantity(input: AnyInput, system: System, definition: Definition): fc.Arbitrary<number> {
  const { reading } = input;
  if (reading.as !== 'quantity' && reading.as !== 'list') throw new Error(`${input.name} is no quantity`);
  const { kind } = reading;
  const unit = systemUnit(kind, system);
  const usual = reading.as === 'quantity' ? reading.usual : undefined;
  const bounds = boundsOf(reading, kind);
  const known = checksOf(definition).flatMap((check) => {
    const value = (check.given as Record<string, string | number | readonly (string | number)[]>)[input.name];
    return (value === undefined ? [] : [value].flat()).map((one) => amountSI(one, kind));
  });
  const [from, to] = usual
    ? usual.map((amount) => amountSI(amount, kind))
    : [Math.max(bounds.low, Math.min(...known)), Math.min(bounds.high, Math.max(...known))];
  const si = random(from ?? 0, to ?? 1);
  return si.map((value) => {
    const own = Number(fromSI(value, unit).toPrecision(6));
    return kind === 'count' ? Math.max(1, Math.round(own)) : own;
  });
}

function cellsFor(
  input: AnyInput,
  system: System,
  definition: Definition,
): fc.Arbitrary<CellValue[] | undefined> {
  const { reading, name } = input;
  const known = checksOf(definition).flatMap((check) => {
    const value = (check.given as Record<string, string | number | undefined>)[name];
    return value === undefined ? [] : [value];
  });
  const given = ((): fc.Arbitrary<CellValue[]> => {
    switch (reading.as) {
      case 'quantity':
        return quantity(input, system, definition).map((one) => [one]);
      case 'list':
        return fc.array(quantity(input, system, definition), { minLength: 3, maxLength: 3 });
      case 'choice':
        return fc.constantFrom(...reading.words).map((word) => [word]);
      case 'set':
        return fc.constantFrom(...known).map((cells) => [cells].flat());
      default:
        return fc.constantFrom(...(known.length > 0 ? known : ['P20'])).map((word) => [word]);
    }
  })();
  return input.optional ? fc.oneof(fc.constant(undefined), given) : given;
}

/** Random calls that the function answers; `count` of each function where that many are found. */
export function randomCalls(count: number, seed: number): GeneratedCall[] {
  return catalogue.flatMap((definition) => {
    const system = fc.constantFrom(...SYSTEMS);
    const call = system.chain((one) =>
      fc.tuple(...inputsOf(definition).map((input) => cellsFor(input, one, definition))).map((cells) => ({
        definition,
        cells: [...cells, [one]],
      })),
    );
    return fc
      .sample(call, { numRuns: count * 15, seed })
      .filter(({ cells }) => {
        const [row] = worksheetFunction(definition).call(
          cells.map((column) => column?.map((cell) => [cell])),
        );
        return row?.every((cell) => typeof cell === 'number' || typeof cell === 'string') ?? false;
      })
      .slice(0, count);
  });
}

/** Rows that a call takes in the sheet: its longest list. */
export const HEIGHT = 4;

/** What stands in B: the call itself, or a function that is asked about it. */
export type AskedAbout = 'SHOW.CHECK' | 'SHOW.MARGIN';

/** A workbook with the calls one under another: name, arguments, then the formula. */
export function workbookOf(calls: readonly GeneratedCall[], asked?: AskedAbout): WorkbookDescription {
  const cells: Record<string, CellDescription | string | number> = {};
  calls.forEach(({ definition, cells: args }, i) => {
    const row = 1 + i * HEIGHT;
    cells[`A${row}`] = definition.name;
    const texts = args.map((column, at) => {
      if (!column) return '';
      const letter = columnLetters(6 + at);
      column.forEach((value, down) => {
        if (value !== null) cells[`${letter}${row + down}`] = { value };
      });
      return column.length > 1 ? `${letter}${row}:${letter}${row + column.length - 1}` : `${letter}${row}`;
    });
    const given =
      asked === undefined
        ? `${definition.name}(${texts.join(',')})`
        : `${asked}(${[`"${definition.name}"`, ...texts].join(',')})`;
    cells[`B${row}`] = { formula: `${NAMESPACE}.${given}` };
  });
  return { sheets: [{ name: 'Calls', cells }] };
}

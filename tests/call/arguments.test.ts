import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/catalogue';
import { readerOf } from '../../src/call/readArgument';
import { worksheetFunction } from '../../src/call/worksheet';
import { CellError, type CellValue } from '../../src/cells/value';
import { amountSI, boundsOf, inBounds } from '../../src/core/amount';
import { inputsOf, type AnyInput, type Definition, type Reading } from '../../src/core/define';
import { quantityText } from '../../src/core/format';
import { fromSI, KINDS, SYSTEMS, systemUnit, toSI, type Kind, type System } from '../../src/core/quantity';
import { findUnit } from '../../src/core/readQuantity';
import type { Unit } from '../../src/core/units';
import { checksOf } from '../support/checks';
import { argumentsOf } from '../support/runCheck';

/** One argument of the catalogue, with its place. */
interface Place<R extends Reading = Reading> {
  readonly definition: Definition;
  readonly index: number;
  readonly input: AnyInput;
  readonly reading: R;
}

const PLACES: readonly Place[] = catalogue.flatMap((definition) =>
  inputsOf(definition).map((input, index) => ({
    definition,
    index,
    input,
    reading: input.reading,
    [fc.toStringMethod]: () => `${definition.name} ${input.name}`,
  })),
);

type Quantity = Extract<Reading, { as: 'quantity' }>;
const quantities = PLACES.filter((place): place is Place<Quantity> => place.reading.as === 'quantity');
const bounded = quantities.filter(({ reading }) => {
  const { low, high } = boundsOf(reading, reading.kind);
  return low > -Infinity || high < Infinity;
});
const choices = PLACES.filter(
  (place): place is Place<Extract<Reading, { as: 'choice' }>> => place.reading.as === 'choice',
);
const names = PLACES.filter(
  (place): place is Place<Extract<Reading, { as: 'named' }>> => place.reading.as === 'named',
);

/** What the person reads who puts this cell in one argument of an otherwise good call; throws where it is accepted. */
function refusalOf({ definition, index, input }: Place, cell: CellValue, system: System): string {
  const [check] = checksOf(definition);
  if (!check) throw new Error(`${definition.name} has no checks`);
  const args = argumentsOf(definition, check, system).map((arg, i) => (i === index ? [[cell]] : arg));
  const answer = worksheetFunction(definition).call(args)[0]?.[0];
  if (!(answer instanceof CellError))
    throw new Error(`${definition.name} takes ${String(cell)} for ${input.name}`);
  return answer.message;
}

/** Fails where the message does not say which argument, what was given, and what is accepted. */
function expectToSay(place: Place, message: string, given: string, accepted: readonly string[]): void {
  expect(message.startsWith(`${place.input.name} is `), message).toBe(true);
  for (const part of [given, ...accepted]) expect(message, place.definition.name).toContain(part);
}

const system = fc.constantFrom(...SYSTEMS);
/** A share of the way from one end of a range to the other. */
const share = fc.integer({ min: 0, max: 1_000_000 }).map((n) => n / 1_000_000);
// No unit, number or name is spelled so.
const nonsense = fc
  .string({ minLength: 1, maxLength: 6, unit: fc.constantFrom('a', 'b', 'c', 'd', 'e', 'f') })
  .map((text) => `xq${text}`);

/** A value that the argument takes, in SI. */
function inside({ reading }: Place<Quantity>, at: number): number {
  const { kind, usual } = reading;
  const { low, high } = boundsOf(reading, kind);
  const [from = 0, to = 1] = usual
    ? usual.map((amount) => amountSI(amount, kind))
    : [Math.max(low, -1), Math.min(high, Math.max(low, 0) + 1)];
  const si = from + at * (to - from);
  return kind === 'count' ? Math.round(si) : si;
}

const text = (value: number, { symbol }: Unit): string => `${value} ${symbol}`.trim();

describe('an argument that is a quantity', () => {
  it('reads a plain number in the unit of the system as that number with its unit', () => {
    fc.assert(
      fc.property(fc.constantFrom(...quantities), share, system, (place, at, units) => {
        const { input, reading } = place;
        const unit = systemUnit(reading.kind, units);
        const si = inside(place, at);
        const value = fromSI(si, unit);
        fc.pre(inBounds(toSI(value, unit), boundsOf(reading, reading.kind)));
        const read = readerOf(input);
        expect(read(value, units)).toBe(read(text(value, unit), units));
        expect(Math.abs(Number(read(value, units)) - si)).toBeLessThanOrEqual(
          1e-12 * (Math.abs(si) + Math.abs(unit.offset)),
        );
      }),
      { numRuns: 1000 },
    );
  });

  it('reads text with a unit the same in either system, whatever the unit', () => {
    fc.assert(
      fc.property(fc.constantFrom(...quantities), share, fc.nat(), (place, at, n) => {
        const { input, reading } = place;
        const { units } = KINDS[reading.kind];
        const unit = units[n % units.length] as Unit;
        fc.pre(unit.symbol !== '');
        const si = inside(place, at);
        const value = fromSI(si, unit);
        fc.pre(inBounds(toSI(value, unit), boundsOf(reading, reading.kind)));
        fc.pre(reading.kind !== 'count' || Number.isInteger(toSI(value, unit)));
        const [inches, metric] = SYSTEMS.map((one) => Number(readerOf(input)(text(value, unit), one)));
        expect(metric).toBe(inches);
        expect(Math.abs((metric ?? NaN) - si)).toBeLessThanOrEqual(
          1e-12 * (Math.abs(si) + Math.abs(unit.offset)),
        );
      }),
      { numRuns: 1000 },
    );
  });

  it('refuses a number outside its limits: which argument, how much, and the limit it passes', () => {
    const beyond = fc.double({ min: 1e-3, max: 1e3, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...bounded), beyond, fc.boolean(), system, (place, by, below, units) => {
        const { kind } = place.reading;
        // A plain number may be a percentage or a fraction: its refusal names both readings.
        fc.pre(kind !== 'percent');
        const unit = systemUnit(kind, units);
        const { low, lowIncluded, high, highIncluded } = boundsOf(place.reading, kind);
        fc.pre(below ? low > -Infinity : high < Infinity);
        const limit = below ? low : high;
        const value = fromSI(limit, unit) + (below ? -1 : 1) * by * (Math.abs(fromSI(limit, unit)) || 1);
        const message = refusalOf(place, value, units);
        const word = below ? (lowIncluded ? 'at least' : 'above') : highIncluded ? 'at most' : 'below';
        expectToSay(place, message, quantityText(toSI(value, unit), kind, units), [
          `${word} ${quantityText(limit, kind, units)}`,
        ]);
      }),
      { numRuns: 1000 },
    );
  });

  it('refuses what is no number: which argument, the text, and what it takes in which unit', () => {
    fc.assert(
      fc.property(fc.constantFrom(...quantities), nonsense, system, (place, cell, units) => {
        const { kind } = place.reading;
        const accepted = [KINDS[kind].says, systemUnit(kind, units).symbol];
        expectToSay(place, refusalOf(place, cell, units), `"${cell}"`, accepted);
      }),
      { numRuns: 500 },
    );
  });

  it('refuses a unit of another kind and one that is none: which argument, the text, and the kind wanted', () => {
    const others = (Object.keys(KINDS) as Kind[]).flatMap((kind) => KINDS[kind].units);
    const unit = fc.oneof(
      fc.constantFrom(...others).map(({ symbol }) => symbol),
      nonsense,
    );
    fc.assert(
      fc.property(fc.constantFrom(...quantities), unit, system, (place, symbol, units) => {
        const { kind } = place.reading;
        fc.pre(symbol !== '' && findUnit(kind, symbol) === undefined);
        const cell = `2 ${symbol}`;
        expectToSay(place, refusalOf(place, cell, units), `"${cell}"`, [KINDS[kind].says]);
      }),
      { numRuns: 1000 },
    );
  });
});

describe('an argument that is a word', () => {
  it('refuses another one: which argument, the word given, and every word that it takes', () => {
    fc.assert(
      fc.property(fc.constantFrom(...choices), nonsense, system, (place, cell, units) => {
        const words = place.reading.words.map((word) => `"${word}"`);
        expectToSay(place, refusalOf(place, cell, units), `"${cell}"`, words);
      }),
      { numRuns: 500 },
    );
  });
});

describe('an argument that is a name', () => {
  it('refuses what names nothing: which argument, the name given, and what it takes', () => {
    fc.assert(
      fc.property(fc.constantFrom(...names), nonsense, system, (place, cell, units) => {
        const message = refusalOf(place, cell, units);
        expectToSay(place, message, cell, []);
        expect(message).toMatch(/nearest|takes|such as|or /);
      }),
      { numRuns: 500 },
    );
  });
});

describe('any argument', () => {
  it('is named where it is missing', () => {
    for (const { definition, index, input } of PLACES) {
      if (input.optional) continue;
      const [check] = checksOf(definition);
      const args = check ? argumentsOf(definition, check, 'mm') : [];
      const [[answer] = []] = worksheetFunction(definition).call(
        args.map((arg, i) => (i === index ? undefined : arg)),
      );
      expect((answer as CellError).message, definition.name).toBe(`${input.name} is missing.`);
    }
  });

  it('that is a quantity or a word says so where it is given TRUE', () => {
    for (const place of [...quantities, ...choices]) {
      expect(refusalOf(place, true, 'mm')).toMatch(new RegExp(`^${place.input.name} is "?TRUE`, 'i'));
    }
  });
});

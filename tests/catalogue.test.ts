import { describe, expect, it } from 'vitest';
import { catalogue } from '../src/catalogue';
import { wordsOf } from '../src/derive/words';
import { CellError, type Argument, type CellValue, type Matrix } from '../src/cells/value';
import { worksheetFunction } from '../src/call/worksheet';
import { amountSI } from '../src/core/amount';
import { kindOf, type Check } from '../src/core/checks';
import { inputsOf, type Definition, type Formula } from '../src/core/define';
import { evaluate } from '../src/core/evaluate';
import { toTex } from '../src/core/expr/tex';
import { programFor } from '../src/core/program';
import { SYSTEMS } from '../src/core/quantity';
import { CHECKS, checksOf } from './support/checks';
import { dimensionFault, symbolFault, unusedConstants } from './support/dimensions';
import { runCheck, argumentsOf, valuesOf } from './support/runCheck';
import { answerIn } from './support/systems';

/** Texts that were read while working on this: a book of drawing, which prints the tables of ISO 286; pages of a handbook. */
const READ_HERE = /ISO 286|Machinery’s Handbook, 31st edition, p\. (?:1005|1741|2168)/;

const isFormula = (definition: Definition): definition is Formula => definition.type === 'formula';

describe.each(catalogue.map((definition) => [definition.name, definition] as const))(
  '%s',
  (_, definition) => {
    describe.each(checksOf(definition).map((check) => [check.from, check] as const))(
      'agrees with %s',
      (_from, check) => {
        it.each(SYSTEMS.filter((system) => (check.units ?? system) === system))('in "%s"', (system) => {
          expect(runCheck(definition, check, system).problem).toBeUndefined();
        });
      },
    );

    it('has its checks beside it, in <name>.checks.ts', () => {
      expect(checksOf(definition).length).toBeGreaterThan(0);
    });

    it.each(checksOf(definition).map((check) => [check.from, kindOf(check)] as const))(
      'calls the source of a check what it is: %s',
      (from, kind) => {
        if (/from memory/.test(from)) expect(kind).toBe('memory');
        if (/common practice/.test(from)) expect(kind).toBe('practice');
        if (/read at|\.(com|net|org|pl|in)\b|\.csv|data sheet/.test(from)) expect(kind).toBe('secondhand');
        // A text is published here only where it was read in this work.
        if (kind === 'published') expect(from).toMatch(READ_HERE);
        // By hand from the equation, or a case that needs none; but not what the function itself gave once.
        if (kind === 'derived')
          expect(from).not.toMatch(/\b(ISO|DIN|ASME|SAE|VDI|FED-STD) ?\d|our own|golden/i);
      },
    );

    it('has checks that give its own arguments, and all that it needs', () => {
      const inputs = inputsOf(definition);
      for (const { given } of checksOf(definition)) {
        const names = Object.keys(given);
        expect(names.filter((name) => !inputs.some((input) => input.name === name))).toEqual([]);
        expect(inputs.filter(({ name, optional }) => !optional && !names.includes(name))).toEqual([]);
      }
    });

    it('has a check from outside and, where it computes, a limiting case', () => {
      const checks = checksOf(definition);
      expect(checks.some(({ limit }) => !limit)).toBe(true);
      if (definition.type !== 'lookup') expect(checks.some(({ limit }) => limit === true)).toBe(true);
    });

    it('answers the same for plain numbers of either system, to 1e-9', () => {
      // Constants without units mean another thing in the other system.
      const inBoth = checksOf(definition).filter(({ units }) => units === undefined);
      expect(inBoth.length).toBeGreaterThan(0);
      for (const check of inBoth) {
        const [inches, metric] = SYSTEMS.map((system) => answerIn(definition, check, system));
        expect(metric?.length).toBe(inches?.length);
        inches?.forEach((cell, i) => {
          const other = metric?.[i];
          if (typeof cell !== 'number' || typeof other !== 'number') expect(other).toBe(cell);
          else
            expect(Math.abs(other - cell), `${cell} ${other}`).toBeLessThanOrEqual(
              1e-9 * Math.max(Math.abs(cell), Math.abs(other)),
            );
        });
      }
    });

    it('says what it means: a summary, help for every argument, a source', () => {
      expect(definition.summary).toMatch(/^[A-Z].*[.]$/);
      for (const { name, says } of inputsOf(definition)) {
        // Constants of a printed model keep the letters that its data sheets print.
        expect(name).toMatch(/^([a-z][A-Za-z0-9]*|[A-Z]\d)$/);
        expect(says).toMatch(/^[^a-z].*[^.]$/);
      }
      expect(definition.sources.length).toBeGreaterThan(0);
    });

    it('names its arguments and symbols once', () => {
      const names = wordsOf(definition).parameters.map(({ name }) => name);
      expect(new Set(names).size).toBe(names.length);
      const symbols = inputsOf(definition).map(({ symbol }) => symbol);
      expect(new Set(symbols).size).toBe(symbols.length);
    });

    it('puts optional arguments last', () => {
      const optional = inputsOf(definition).map((input) => input.optional);
      expect(optional).toEqual([...optional].sort((a, b) => Number(a) - Number(b)));
    });

    it('has limits and defaults in units of their kind', () => {
      for (const { reading, default: standard } of inputsOf(definition)) {
        if (reading.as !== 'quantity') continue;
        const { kind, min, above, max, below, usual } = reading;
        for (const amount of [min, above, max, below, standard, ...(usual ?? [])]) {
          if (amount !== undefined) expect(Number.isFinite(amountSI(amount, kind))).toBe(true);
        }
      }
    });

    it('answers omitted, blank, text, range and error arguments with cells, never with NaN or a fault', () => {
      const subject = worksheetFunction(definition);
      const { parameters } = subject;
      const call = (args: readonly Argument[]): Matrix => subject.call(args);
      const [check] = checksOf(definition);
      const good = argumentsOf(definition, check as Check, 'mm');
      const odd: CellValue[] = [null, '', 'nonsense', -1, 0, 1e300, true, new CellError('#N/A'), '1 furlong'];
      const answers = [
        call([]),
        call(parameters.map(() => null)),
        ...parameters.flatMap((_p, i) =>
          odd.map((cell) => call(good.map((arg, j) => (j === i ? [[cell]] : arg)))),
        ),
        ...parameters.map((_p, i) =>
          call(
            good.map((arg, j) =>
              j === i
                ? [
                    [1, 2],
                    [3, 4],
                  ]
                : arg,
            ),
          ),
        ),
      ];
      for (const cell of answers.flat(2)) {
        expect(cell).not.toBeNull();
        if (typeof cell === 'number') expect(Number.isFinite(cell)).toBe(true);
        if (cell instanceof CellError) {
          expect(cell.message).not.toMatch(/Internal fault/);
          if (cell.code === '#VALUE!') expect(cell.message.length).toBeGreaterThan(10);
        }
      }
    });

    it('spills over a column of equal arguments', () => {
      const [check] = checksOf(definition);
      const args = argumentsOf(definition, check as Check, 'mm');
      const [one] = worksheetFunction(definition).call(args);
      const at = inputsOf(definition).findIndex((input, i) => input.reading.as !== 'list' && args[i]);
      if (at < 0) return;
      const three = worksheetFunction(definition).call(
        args.map((arg, i) => (i === at && arg?.[0] ? [arg[0], arg[0], arg[0]] : arg)),
      );
      expect(three).toEqual([one, one, one]);
    });
  },
);

describe.each(catalogue.filter(isFormula).map((definition) => [definition.name, definition] as const))(
  'the equations of %s',
  (_, definition) => {
    it.each(checksOf(definition).map((check) => [check.from, check] as const))(
      'and conditions fit in dimension (%s)',
      (_from, check) => {
        expect(dimensionFault(definition, valuesOf(definition, check))).toBeUndefined();
      },
    );

    it('have one meaning for each symbol, and a use for each constant', () => {
      for (const check of checksOf(definition)) {
        expect(symbolFault(definition, valuesOf(definition, check))).toBeUndefined();
      }
      expect(unusedConstants(definition)).toEqual([]);
    });

    it('can be typeset and shown step by step', () => {
      for (const check of checksOf(definition)) {
        const { steps, answer } = evaluate(definition, valuesOf(definition, check), 'mm');
        if (typeof answer === 'number') expect(steps.length).toBe(Object.keys(definition.steps).length);
        for (const { written } of programFor(definition, valuesOf(definition, check)).steps) {
          expect(toTex(written)).not.toMatch(/undefined|NaN/);
        }
      }
    });
  },
);

describe('the catalogue', () => {
  it('says of every quantity what is usual, or why nothing is; at least nine of ten have a range', () => {
    const all = catalogue.flatMap((definition) =>
      inputsOf(definition).flatMap(({ name, reading }) =>
        reading.as === 'quantity' ? [{ of: `${definition.name} ${name}`, ...reading }] : [],
      ),
    );
    const silent = all.filter(({ usual, noUsual }) => (usual === undefined) === (noUsual === undefined));
    expect(silent.map(({ of }) => of)).toEqual([]);
    expect(all.filter(({ usual }) => usual).length).toBeGreaterThanOrEqual(0.9 * all.length);
  });

  it('has one file of checks for each definition, and none for what it does not list', () => {
    expect(CHECKS.map(({ of }) => of).sort()).toEqual(catalogue.map(({ name }) => name).sort());
  });

  it('has no two ids that Excel stores alike', () => {
    const stored = catalogue.map(({ name }) => name.toUpperCase().replace(/[._]/g, '_'));
    expect(new Set(stored).size).toBe(stored.length);
  });

  it('has ids of a family and a quantity in capitals', () => {
    for (const { name } of catalogue) expect(name).toMatch(/^[A-Z]+\.[A-Z0-9]+$/);
  });
});

import { beforeAll, describe, expect, it } from 'vitest';
import { CellError } from '../../src/cells/value';
import type { CellValue, Matrix } from '../../src/cells/value';
import { worksheetFunctions } from '../../src/call/functions';
import { calculateFormulas } from '../../src/workbook/engine/calculateFormulas';
import checks from './checks.json';

/** One row of checks.json: a formula as it is typed, and what stands in books, standards or a calculation apart. */
interface Check {
  readonly formula: string;
  readonly expected?: Expected | readonly (readonly Expected[])[];
  readonly rel_tol?: number;
  readonly abs_tol?: number;
  readonly expected_error?: string;
  readonly must_mention?: string;
  readonly topic: string;
  readonly quantity: string;
  readonly source: string;
  readonly kind: string;
}

type Expected = number | string | boolean;

const known = new Set(worksheetFunctions.map(({ id }) => id));
const rows: readonly Check[] = checks;

function namesIn({ formula }: Pick<Check, 'formula'>): string[] {
  return [...formula.matchAll(/MOLD\.([A-Z0-9.]+)\(/g)].map(([, id]) => id ?? '');
}

/** Functions that a formula uses and the catalogue does not have yet, those given by name included. */
function missing({ formula, must_mention }: Check): string[] {
  const named = /MOLD\.(?:TRY|SHOW)\.\w+\("([A-Z]+\.[A-Z.0-9]+)"/.exec(formula)?.[1];
  // A name that is wrong on purpose is answered with the nearest right one, which must be there.
  const asked = must_mention?.includes('.') ? must_mention : named;
  return [...namesIn({ formula }), ...(asked === undefined ? [] : [asked])].filter((id) => !known.has(id));
}

const ready = rows.filter((row) => missing(row).length === 0);

describe(`the ${rows.length} check values of books, standards and calculations apart`, () => {
  let results: readonly Matrix[] = [];

  beforeAll(async () => {
    results = await calculateFormulas(
      ready.map(({ formula }) => formula),
      worksheetFunctions,
    );
  });

  it('leave none waiting once there are as many functions as they name', () => {
    const waiting = rows.length - ready.length;
    if (waiting > 0)
      console.info(`${waiting} of ${rows.length} check values wait for functions not there yet.`);
    const named = new Set(rows.flatMap(namesIn));
    expect(known.size < named.size || waiting === 0, [...named].filter((id) => !known.has(id)).join()).toBe(
      true,
    );
    expect(ready.length).toBeGreaterThan(0);
  });

  it.each(ready.map((row, index) => [row.formula, row, index] as const))('%s', (_, row, index) => {
    const values = results[index] ?? [];
    if (row.expected_error !== undefined) {
      const refused = values.flat().find((value) => value instanceof CellError);
      expect(refused?.code).toBe(row.expected_error);
      expect(refused?.message).toContain(row.must_mention);
      return;
    }
    const wanted = expectedRows(row.expected);
    expect([values.length, values[0]?.length], row.source).toEqual([wanted.length, wanted[0]?.length]);
    const shown = values.map((line) => line.map(plain));
    wanted.forEach((line, r) => {
      line.forEach((one, c) => {
        const value = values[r]?.[c] ?? null;
        if (!agrees(value, one, row)) expect(shown, `${row.quantity}; ${row.source}`).toEqual(wanted);
      });
    });
  });
});

function expectedRows(expected: Check['expected']): readonly (readonly Expected[])[] {
  return typeof expected === 'object' ? expected : [[expected ?? '']];
}

function agrees(value: CellValue, expected: Expected, { rel_tol = 0, abs_tol = 0 }: Check): boolean {
  if (typeof expected !== 'number') return value === expected;
  return (
    typeof value === 'number' && Math.abs(value - expected) <= Math.max(rel_tol * Math.abs(expected), abs_tol)
  );
}

function plain(value: CellValue): unknown {
  return value instanceof CellError ? `${value.code} ${value.message}` : value;
}

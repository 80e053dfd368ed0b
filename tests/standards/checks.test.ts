import { beforeAll, describe, expect, it } from 'vitest';
import type { Matrix } from '../../src/cells/value';
import { worksheetFunctions } from '../../src/call/functions';
import { calculateFormulas } from '../../src/workbook/calculateFormulas';
import { disagreement, type CheckRow } from '../support/checkRows';
import checks from './checks.json';

const known = new Set(worksheetFunctions.map(({ id }) => id));
const rows: readonly CheckRow[] = checks;

function namesIn({ formula }: Pick<CheckRow, 'formula'>): string[] {
  return [...formula.matchAll(/MOLD\.([A-Z0-9.]+)\(/g)].map(([, id]) => id ?? '');
}

/** Functions that a formula uses and the catalogue does not have yet, those given by name included. */
function missing({ formula, must_mention }: CheckRow): string[] {
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
    expect(disagreement(row, results[index] ?? []), `${row.quantity}; ${row.source}`).toBeUndefined();
  });
});

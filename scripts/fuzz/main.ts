/**
 * Types random formulas into this calculation and into LibreOffice and compares: `npm run fuzz [-- SEED]`. One seed is
 * always the same, the other new each time; both are printed, so that a find can be repeated. A difference under the fixed
 * seed, or one that was asked for, fails the run; what a new seed finds is printed and is work for the next change.
 */
import { cellAddress } from '../../src/cells/address';
import { CellError, type CellValue } from '../../src/cells/value';
import { Book } from '../../src/sheet/book';
import type { BookCell } from '../../src/sheet/content';
import { CELLS } from './cells';
import { calculatedElsewhere } from './elsewhere';
import { randomFormulas } from './formulas';

const FIXED_SEED = 20_260_101;
const FORMULAS_A_SEED = 3000;
/** Beside the cells that they read. */
const COLUMN = 7;

function ours(cells: readonly BookCell[]): (row: number) => { value: CellValue; kept: string | undefined } {
  const sheet = { name: 'Fuzz', cells, tables: [], rows: [] };
  const book = new Book({ sheets: [sheet], names: [], date1904: false }, []);
  book.calculate();
  return (row) => ({ value: book.value(0, row, COLUMN), kept: book.keptReason(0, row, COLUMN) });
}

const isError = (value: CellValue): boolean =>
  value instanceof CellError || (typeof value === 'string' && /^(?:Err:\d+|#[A-Z/0]+[!?]?)$/.test(value));

/** LibreOffice writes 15 digits; an empty text and no text are the same to it. */
function agree(a: CellValue, b: CellValue): boolean {
  if (isError(a) || isError(b)) return isError(a) && isError(b);
  if (typeof a === 'number' && typeof b === 'number') {
    const distance = Math.abs(a - b);
    return distance <= 1e-9 * Math.max(Math.abs(a), Math.abs(b)) || distance < 1e-12;
  }
  return (a ?? '') === (b ?? '');
}

async function main(): Promise<void> {
  const start = performance.now();
  const asked = process.argv[2];
  const seeds = [FIXED_SEED, Number(asked ?? Math.floor(Math.random() * 2 ** 31))];
  console.log(`Random formulas from the seeds ${seeds.join(' and ')}`);
  const formulas = seeds.flatMap((seed) => randomFormulas(FORMULAS_A_SEED, seed));
  const data = CELLS.flatMap((line, row) =>
    line.flatMap((value, column) => (value === null ? [] : [{ row, column, value }])),
  );
  const typed = formulas.map((formula, row) => ({ row, column: COLUMN, value: null, formula }));
  const there = await calculatedElsewhere(
    [...data, ...typed.map(({ row, column, formula }) => ({ row, column, formula }))],
    COLUMN,
  );
  const here = ours([...data, ...typed]);
  let passed = 0;
  let failed = 0;
  let found = 0;
  formulas.forEach((formula, row) => {
    const { value, kept } = here(row);
    const other = there(row);
    if (kept === undefined && agree(value, other)) passed++;
    else {
      const isNew = asked === undefined && row >= FORMULAS_A_SEED;
      if (isNew) found++;
      else failed++;
      if (failed + found <= 40)
        console.log(
          `  ${cellAddress(row, COLUMN)} =${formula}\n    here ${shown(value)}${kept === undefined ? '' : ` (kept: ${kept})`}, LibreOffice ${shown(other)}`,
        );
    }
  });
  console.log(
    `Fuzz against LibreOffice, ${((performance.now() - start) / 1000).toFixed(1)} s\n${passed} passed, ${failed} failed`,
  );
  if (found > 0) console.log(`The new seed found ${found} more: npm run fuzz -- ${seeds[1] ?? ''}`);
  if (failed > 0) process.exitCode = 1;
}

const shown = (value: CellValue): string => (value instanceof CellError ? value.code : JSON.stringify(value));

await main();

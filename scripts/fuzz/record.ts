/**
 * Asks LibreOffice for the values that the test of the functions holds them to:
 *
 *     node scripts/bundled.mjs scripts/fuzz/record.ts
 *
 * The formulas stand in tests/sheet/functions/formulas.txt, one a line; the answers go into libreoffice.tsv beside it.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { CellError } from '../../src/cells/value';
import { calculatedElsewhere } from './elsewhere';

const FOLDER = 'tests/sheet/functions';
const formulas = readFileSync(`${FOLDER}/formulas.txt`, 'utf8').split('\n').filter(Boolean);
const value = await calculatedElsewhere(
  formulas.map((formula, row) => ({ row, column: 0, formula })),
  0,
);
const lines = formulas.map((formula, row) => {
  const found = value(row);
  return `${formula}\t${found instanceof CellError ? found.code : JSON.stringify(found)}\n`;
});
writeFileSync(`${FOLDER}/libreoffice.tsv`, lines.join(''));

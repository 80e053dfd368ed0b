import { beforeAll, describe, expect, it } from 'vitest';
import { worksheetFunctions } from '../../src/call/functions';
import { cellAddress } from '../../src/cells/address';
import { CellError } from '../../src/cells/value';
import { newDesign } from '../../src/forms/newDesign';
import { sections } from '../../src/forms/sections';
import { cellFinder, type Workbook } from '../../src/package/model';
import { shareWorkbook } from '../../src/share';
import { agrees } from '../../src/workbook/agrees';
import { hasOffice, recalculatedByOffice } from '../share/office';

/** Asked for with the other proofs of copies: `FOLLOW=sample` or `FOLLOW=1`. */
const isAsked = process.env['FOLLOW'] !== undefined;

describe.skipIf(!hasOffice || !isAsked)('a design of all sections as a native copy, in LibreOffice', () => {
  let design: Workbook;
  let elsewhere: Workbook;

  beforeAll(async () => {
    design = await newDesign({ sections, system: 'in', exampleShots: true }, worksheetFunctions);
    const { bytes } = await shareWorkbook(design, worksheetFunctions, { as: 'native', basis: true });
    elsewhere = recalculatedByOffice(bytes);
  }, 600_000);

  it('gives every value that the sheets have, and no error', () => {
    const faults: string[] = [];
    let compared = 0;
    for (const sheet of design.sheets) {
      const there = elsewhere.sheets.find(({ name }) => name === sheet.name);
      const find = there ? cellFinder(there) : () => undefined;
      for (const { row, column, formula, value } of sheet.cells) {
        // Formulas as texts are others in a copy.
        if (formula === undefined || formula.startsWith('FORMULATEXT(')) continue;
        compared++;
        const got = find(row, column)?.value ?? null;
        if (got instanceof CellError || !(agrees(value, got) || (value === '' && got === null)))
          faults.push(
            `${sheet.name}!${cellAddress(row, column)} ${formula}: ${String(got)} for ${String(value)}`,
          );
      }
    }
    expect(faults).toEqual([]);
    expect(compared).toBeGreaterThan(400);
  });
});

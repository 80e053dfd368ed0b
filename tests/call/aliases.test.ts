import { describe, expect, it } from 'vitest';
import { documentsOf, functionSearch } from '../../src/call/search';
import { worksheetFunctions } from '../../src/call/functions';
import { functionsJson } from '../../src/excel/functionsJson';
import { newWorkbook, readWorkbook, saveWorkbook } from '../../src/package';
import { isListed } from '../../src/derive/words';
import { shareWorkbook } from '../../src/share';
import { calculateFormulas } from '../../src/workbook/calculateFormulas';
import { checkWorkbook } from '../../src/workbook/check';
import { recalculate } from '../../src/workbook/recalculate';

const ids = worksheetFunctions.map(({ id }) => id);
const aliases = worksheetFunctions.filter((fn) => !isListed(fn));
const OLD = 'MOLD.EDGE.CENTRE(10.5,6,"left","mm")';
const NEW = 'MOLD.EDGE.CENTER(10.5,6,"left","mm")';

describe('another name of a function', () => {
  it('answers as the function does, also where it is named to another', async () => {
    const asked = [OLD, NEW, `MOLD.SHOW.SOURCE("EDGE.CENTRE")`, `MOLD.SHOW.SOURCE("EDGE.CENTER")`];
    const [old, own, source, ownSource] = await calculateFormulas(asked, worksheetFunctions);
    expect(old?.[0]?.[0]).toBeCloseTo(13.5, 12);
    expect(own).toEqual(old);
    expect(source).toEqual(ownSource);
  });

  it('belongs to a function of the catalogue and is no name of another', () => {
    expect(aliases.map(({ id, aliasOf }) => [id, aliasOf])).toEqual([['EDGE.CENTRE', 'EDGE.CENTER']]);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('is found by no search and stands in no list', () => {
    const documents = documentsOf(worksheetFunctions).map(({ id }) => id);
    const found = functionSearch(worksheetFunctions)('edge centre').map(({ id }) => id);
    expect(found).toContain('EDGE.CENTER');
    for (const { id } of aliases) expect([...documents, ...found]).not.toContain(id);
  });

  it('is registered with Excel, says whose name it is, and has the help of the function', () => {
    const { functions } = functionsJson(worksheetFunctions, (id) => `https://localhost/${id}`);
    expect(functions.find(({ id }) => id === 'EDGE.CENTRE')).toMatchObject({
      description: expect.stringMatching(/^Another name of EDGE\.CENTER\. /) as unknown,
      helpUrl: 'https://localhost/EDGE.CENTER',
    });
  });

  it('in a stored sheet stays, calculates, is no unknown function, and becomes a native formula in a copy', async () => {
    const sheet = newWorkbook({ sheets: [{ name: 'A', cells: { A1: { formula: OLD } } }] });
    const stored = readWorkbook(saveWorkbook(sheet, await recalculate(sheet, worksheetFunctions)), ids);
    expect(stored.sheets[0]?.cells[0]).toMatchObject({
      formula: OLD,
      value: expect.closeTo(13.5, 12) as unknown,
    });
    expect(checkWorkbook(stored, worksheetFunctions)).toMatchObject({
      unknown: [],
      changed: [],
      formulas: 1,
    });
    const { cells, left } = await shareWorkbook(stored, worksheetFunctions, { as: 'native' });
    expect(cells.map(({ how }) => how)).toEqual(['native']);
    expect(left).toEqual([]);
  });
});

import { describe, expect, it } from 'vitest';
import { areaAddress, cellAddress } from '../../../src/cells/address';
import { readWorkbook, saveWorkbook } from '../../../src/package';
import { Book } from '../../../src/sheet/book';
import type { Workbook } from '../../../src/package/model';
import { editWorkbook } from '../../../src/package/edits';
import { knownFunctions } from '../../../src/package/spelling';
import { CannotChange, changeStructure, type StructureAct } from '../../../src/package/structure';
import { MAIN, rels, small, types, zip, type Files } from '../packages';

const OFFICE = 'http://schemas.microsoft.com/office';
const X14 = `${OFFICE}/spreadsheetml/2009/9/main`;
const FIRST = '{11111111-2222-4333-8444-0000000000A1}';
const REPLY = '{11111111-2222-4333-8444-0000000000A2}';
const PERSON = '{99999999-2222-4333-8444-0000000000FF}';

const row = (r: number, cells: string): string => `<row r="${r}">${cells}</row>`;
const text = (at: string, value: string): string => `<c r="${at}" t="str"><v>${value}</v></c>`;
const number = (at: string, value: number): string => `<c r="${at}"><v>${value}</v></c>`;

/** What other programs put into a file besides cells: a table with a slicer, a thread of comments, sparklines, a data table. */
function foreign(): Workbook {
  const data =
    row(1, ['Pocket', 'Depth', 'Draft', 'Push'].map((name, i) => text(cellAddress(0, i), name)).join('')) +
    row(
      2,
      number('A2', 1) +
        number('B2', 2) +
        number('C2', 3) +
        '<c r="D2"><f>SUM(Cuts[[#This Row],[Pocket]:[Draft]])</f><v>6</v></c>',
    ) +
    row(
      3,
      number('A3', 4) +
        number('B3', 5) +
        number('C3', 6) +
        '<c r="D3"><f>Cuts[[#This Row],[Draft]]</f><v>6</v></c>',
    ) +
    row(
      6,
      number('A6', 7) + '<c r="B6"><f t="dataTable" ref="B6:B7" dt2D="0" dtr="0" r1="A2"/><v>1</v></c>',
    ) +
    row(7, number('A7', 8) + number('B7', 2));
  const files: Files = small(data);
  const sheet = `<worksheet xmlns="${MAIN}" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"><sheetData>${data}</sheetData><tableParts count="1"><tablePart r:id="rId1"/></tableParts><extLst><ext xmlns:x14="${X14}" uri="{05C60535-1F16-4fd2-B633-F4F36F0B64E0}"><x14:sparklineGroups xmlns:xm="${OFFICE}/excel/2006/main"><x14:sparklineGroup><x14:sparklines><x14:sparkline><xm:f>Main!A2:C2</xm:f><xm:sqref>F2</xm:sqref></x14:sparkline></x14:sparklines></x14:sparklineGroup></x14:sparklineGroups></ext></extLst></worksheet>`;
  return readWorkbook(
    zip({
      ...files,
      '[Content_Types].xml': types({
        'xl/workbook.xml': 'sheet.main+xml',
        'xl/worksheets/sheet1.xml': 'worksheet+xml',
        'xl/tables/table1.xml': 'table+xml',
        'xl/comments1.xml': 'comments+xml',
        'xl/threadedComments/threadedComment1.xml': 'application/vnd.ms-excel.threadedcomments+xml',
        'xl/persons/person.xml': 'application/vnd.ms-excel.person+xml',
        'xl/slicerCaches/slicerCache1.xml': 'application/vnd.ms-excel.slicerCache+xml',
      }),
      'xl/_rels/workbook.xml.rels': rels(
        ['worksheet', 'worksheets/sheet1.xml'],
        [`${OFFICE}/2017/10/relationships/person`, 'persons/person.xml'],
        [`${OFFICE}/2007/relationships/slicerCache`, 'slicerCaches/slicerCache1.xml'],
      ),
      'xl/worksheets/sheet1.xml': sheet,
      'xl/worksheets/_rels/sheet1.xml.rels': rels(
        ['table', '../tables/table1.xml'],
        ['comments', '../comments1.xml'],
        [`${OFFICE}/2017/10/relationships/threadedComment`, '../threadedComments/threadedComment1.xml'],
      ),
      'xl/tables/table1.xml': `<table xmlns="${MAIN}" id="1" name="Cuts" displayName="Cuts" ref="A1:D3"><autoFilter ref="A1:D3"/><tableColumns count="4"><tableColumn id="1" name="Pocket"/><tableColumn id="2" name="Depth"/><tableColumn id="3" name="Draft"/><tableColumn id="4" name="Push"/></tableColumns></table>`,
      'xl/comments1.xml': `<comments xmlns="${MAIN}"><authors><author>tc=${FIRST}</author></authors><commentList><comment ref="A3" authorId="0"><text><t>[Threaded comment] Deep enough?</t></text></comment></commentList></comments>`,
      'xl/threadedComments/threadedComment1.xml': `<ThreadedComments xmlns="${OFFICE}/spreadsheetml/2018/threadedcomments"><threadedComment ref="A3" personId="${PERSON}" id="${FIRST}"><text>Deep enough?</text></threadedComment><threadedComment ref="A3" personId="${PERSON}" id="${REPLY}" parentId="${FIRST}"><text>Yes.</text></threadedComment></ThreadedComments>`,
      'xl/persons/person.xml': `<personList xmlns="${OFFICE}/spreadsheetml/2018/threadedcomments"><person displayName="Bench" id="${PERSON}"/></personList>`,
      'xl/slicerCaches/slicerCache1.xml': `<slicerCacheDefinition xmlns="${X14}" name="Slicer_Depth" sourceName="Depth"><extLst><ext xmlns:x15="${OFFICE}/spreadsheetml/2010/11/main" uri="{2F2917AC-EB37-4324-AD4E-5DD8C200BD13}"><x15:tableSlicerCache tableId="1" column="2"/></ext></extLst></slicerCacheDefinition>`,
    }),
    [],
  );
}

const change = (act: StructureAct): Workbook => changeStructure(foreign(), act, knownFunctions([]));
const part = (workbook: Workbook, name: string): string => new TextDecoder().decode(workbook.parts.get(name));
const formula = (workbook: Workbook, address: string): string | undefined =>
  workbook.sheets[0]?.cells.find(({ row: r, column }) => cellAddress(r, column) === address)?.formula;

describe('a table', () => {
  it('whose column goes leaves spans of columns the columns that are left', () => {
    const after = change({ do: 'delete', what: 'columns', sheet: 'Main', at: 2, count: 1 });
    expect(formula(after, 'C2')).toBe('SUM(Cuts[[#This Row],[Pocket]:[Depth]])');
    expect(formula(after, 'C3')).toBe('#REF!');
  });

  it('is not taken from under its slicer', () => {
    expect(() => change({ do: 'delete', what: 'columns', sheet: 'Main', at: 1, count: 1 })).toThrow(
      new CannotChange(
        'A slicer filters the column "Depth" of the table "Cuts"; take the slicer off first, in the program that made it.',
      ),
    );
  });
});

describe('rows put in above', () => {
  const after = change({ do: 'insert', what: 'rows', sheet: 'Main', at: 1, count: 2 });

  it('move a thread of comments and leave its people', () => {
    expect(part(after, 'xl/threadedComments/threadedComment1.xml').match(/ref="A5"/g)).toHaveLength(2);
    expect(part(after, 'xl/comments1.xml')).toContain('ref="A5"');
    expect(part(after, 'xl/persons/person.xml')).toContain(PERSON);
  });

  it('move a sparkline and what it draws, and the input of a data table', () => {
    expect(part(after, 'xl/worksheets/sheet1.xml')).toContain(
      '<xm:f>Main!A4:C4</xm:f><xm:sqref>F4</xm:sqref>',
    );
    expect(part(after, 'xl/worksheets/sheet1.xml')).toContain('ref="B8:B9" dt2D="0" dtr="0" r1="A4"');
    expect(after.sheets[0]?.tables.map(({ area }) => areaAddress(area))).toEqual(['A1:D5']);
  });
});

it('a copied sheet has threads of its own, by the same people', () => {
  const after = change({ do: 'copySheet', sheet: 'Main', name: 'Main (2)' });
  const copy = part(after, 'xl/threadedComments/threadedComment2.xml');
  const [first, reply] = [...copy.matchAll(/ id="(\{[^"]+\})"/g)].map(([, id]) => id ?? '');
  expect(new Set([first, reply, FIRST, REPLY]).size).toBe(4);
  expect(copy).toContain(`parentId="${first ?? ''}"`);
  expect(copy.match(new RegExp(`personId="${PERSON}"`, 'g'))).toHaveLength(2);
  expect(part(after, 'xl/comments2.xml')).toContain(`tc=${first ?? ''}`);
  expect(part(after, 'xl/threadedComments/threadedComment1.xml')).toContain(FIRST);
});

it('the filter of a table is set and cleared in the table', () => {
  const filter = { do: 'setFilter', sheet: 'Main', table: 'Cuts', hidden: [1] } as const;
  const area = { top: 0, left: 0, bottom: 2, right: 3 };
  const known = knownFunctions([]);
  const filtered = editWorkbook(foreign(), { ...filter, area, column: 1, shows: ['5'] }, known);
  expect(part(filtered, 'xl/tables/table1.xml')).toContain(
    '<autoFilter ref="A1:D3"><filterColumn colId="1"><filters><filter val="5"/></filters></filterColumn></autoFilter>',
  );
  expect(part(filtered, 'xl/worksheets/sheet1.xml')).not.toContain('autoFilter');
  expect(filtered.sheets[0]?.rows.filter((one) => one.hidden).map((one) => one.row)).toEqual([1]);
  const cleared = editWorkbook(filtered, { do: 'clearFilter', sheet: 'Main', table: 'Cuts' }, known);
  expect(cleared.sheets[0]?.tables[0]?.filter).toEqual({ area, columns: [] });
  expect(cleared.sheets[0]?.rows.some((one) => one.hidden)).toBe(false);
});

it('a heading typed anew is the name of its column, in the table and in every formula', () => {
  const change = { sheet: 'Main', row: 0, column: 2, value: 'Draft #1' } as const;
  const after = readWorkbook(saveWorkbook(foreign(), [change]), []);
  expect(after.sheets[0]?.tables[0]?.columns).toEqual(['Pocket', 'Depth', 'Draft #1', 'Push']);
  expect(formula(after, 'D2')).toBe("SUM(Cuts[[#This Row],[Pocket]:[Draft '#1]])");
  expect(formula(after, 'D3')).toBe("Cuts[[#This Row],[Draft '#1]]");
  const book = new Book(after, []);
  book.calculate();
  expect(book.value(0, 1, 3)).toBe(6);
  const taken = readWorkbook(saveWorkbook(foreign(), [{ ...change, value: 'Depth' }]), []);
  expect(taken.sheets[0]?.tables[0]?.columns[2]).toBe('Draft');
});

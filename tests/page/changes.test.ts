import { describe, expect, it } from 'vitest';
import { CellError, type CellValue } from '../../src/cells/value';
import { changesOf, type SheetNow } from '../../src/page/changes';
import type { GridCell } from '../../src/page/gridCells';
import { parseArea, parseCell } from '../../src/cells/address';
import { type Cell, type Sheet, type Workbook } from '../../src/package/model';

type Content = {
  value?: CellValue;
  formula?: string;
  spill?: string;
  style?: GridCell['style'];
  isUnreached?: true;
};

function place(address: string) {
  const at = parseCell(address);
  if (!at) throw new Error(address);
  return at;
}

const areaOf = (spill: string | undefined) => (spill === undefined ? undefined : parseArea(spill));

/** A workbook of one sheet, with as much of it as the comparison looks at. */
function opened(cells: Record<string, Content>): Workbook {
  const sheet = {
    name: 'Insert',
    cells: Object.entries(cells).map(([address, { value = null, formula, spill, style = 0 }]): Cell => {
      const area = areaOf(spill);
      return {
        ...place(address),
        value,
        ...(formula !== undefined && { formula }),
        ...(area && { spill: area }),
        style: typeof style === 'number' ? style : 0,
      };
    }),
  } as unknown as Sheet;
  return { sheets: [sheet] } as unknown as Workbook;
}

function now(cells: Record<string, Content>): SheetNow {
  const at = new Map(
    Object.entries(cells).map(([address, content]) => [JSON.stringify(place(address)), content]),
  );
  return {
    places: () => [...at.keys()].map((key) => JSON.parse(key) as { row: number; column: number }),
    read: (row, column): GridCell => {
      const {
        value = null,
        formula,
        spill,
        style,
        isUnreached,
      } = at.get(JSON.stringify({ row, column })) ?? {};
      const area = areaOf(spill);
      return {
        value,
        ...(style !== undefined && { style }),
        ...(formula !== undefined && { formula }),
        ...(area && { spill: area }),
        ...(isUnreached && { isUnreached }),
      };
    },
  };
}

function changes(
  before: Record<string, Content>,
  after: Record<string, Content>,
  ...options: [{ keepsUnreached: true }?]
) {
  return changesOf(opened(before), () => now(after), ...options).map(({ sheet, ...change }) => {
    expect(sheet).toBe('Insert');
    return change;
  });
}

describe('what is written into the file', () => {
  const before = { A1: { value: 5 }, B1: { value: 10, formula: 'A1*2' } };

  it('is nothing where nothing changed', () => {
    expect(changes(before, before)).toEqual([]);
  });

  it('is a value typed, and the results that follow from it', () => {
    expect(changes(before, { A1: { value: 6 }, B1: { value: 12, formula: 'A1*2' } })).toEqual([
      { row: 0, column: 0, value: 6 },
      { row: 0, column: 1, value: 12, formula: 'A1*2' },
    ]);
  });

  it('keeps in a draft the value of the file where a calculation is still under way', () => {
    const unreached = { value: new CellError('#N/A', 'Not calculated'), isUnreached: true } as const;
    const during = {
      A1: { value: 6 },
      B1: { ...unreached, formula: 'A1*2' },
      C1: { ...unreached, formula: 'A1*3' },
    };
    const draft = changes(before, during, { keepsUnreached: true });
    expect(draft.map(({ column, value }) => [column, value])).toEqual([
      [0, 6],
      [2, unreached.value],
    ]);
    // In a file that a person saves after stopping it, an old value would be a wrong one.
    expect(changes(before, during).map(({ column }) => column)).toEqual([0, 1, 2]);
    const spilling = { A1: { value: 1, formula: 'F()', spill: 'A1:A2' }, A2: { value: 2 } };
    const spill = { A1: { ...unreached, formula: 'F()', spill: 'A1:A2' } };
    expect(changes(spilling, spill, { keepsUnreached: true })).toEqual([]);
  });

  it('is null where a cell was cleared', () => {
    expect(changes(before, { A1: { value: 5 } })).toEqual([{ row: 0, column: 1, value: null }]);
  });

  it('tells a text of digits from a number', () => {
    expect(changes({ A1: { value: 5 } }, { A1: { value: '5' } })).toEqual([
      { row: 0, column: 0, value: '5' },
    ]);
  });

  it('takes an error as the same by its code: the message is not in the file', () => {
    const stored = { A1: { value: new CellError('#N/A'), formula: 'F()' } };
    expect(
      changes(stored, { A1: { value: new CellError('#N/A', 'Not in the table.'), formula: 'F()' } }),
    ).toEqual([]);
  });

  it('is a style alone, with the value it is for', () => {
    const bold = { font: { bold: true } };
    expect(changes(before, { ...before, A1: { value: 5, style: bold } })).toEqual([
      { row: 0, column: 0, value: 5, style: bold },
    ]);
    expect(changes(before, { ...before, A1: { value: 5, style: 3 } })).toEqual([
      { row: 0, column: 0, value: 5, style: 3 },
    ]);
  });

  it('takes away the style of a cell that has none any more', () => {
    const styled = { A1: { value: 5, style: 3 } };
    expect(changes(styled, styled)).toEqual([]);
    expect(changes(styled, { A1: { value: 5 } })).toEqual([{ row: 0, column: 0, value: 5, style: 0 }]);
  });

  it('is the look of a blank cell', () => {
    expect(changes({}, { C3: { style: 2 } })).toEqual([{ row: 2, column: 2, value: null, style: 2 }]);
    expect(changes({ C3: { style: 2 } }, { C3: { style: 2 } })).toEqual([]);
  });

  it('is the whole of an array, by the cell of its formula', () => {
    const spilled = { A1: { value: 1, formula: 'SEQUENCE(1,2)', spill: 'A1:B1' }, B1: { value: 2 } };
    expect(changes({}, spilled)).toEqual([
      { row: 0, column: 0, value: 1, formula: 'SEQUENCE(1,2)', spill: [[1, 2]] },
    ]);
  });

  it('leaves out what an array did fill: the array takes it away itself', () => {
    const spilled = { A1: { value: 1, formula: 'SEQUENCE(1,2)', spill: 'A1:B1' }, B1: { value: 2 } };
    expect(changes(spilled, { A1: { value: 1 } })).toEqual([{ row: 0, column: 0, value: 1 }]);
  });
});

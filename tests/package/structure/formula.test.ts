import { describe, expect, it } from 'vitest';
import { parseArea } from '../../../src/cells/address';
import { rewriteFormula, type Rewriting } from '../../../src/package/structure/formula';
import { planOf } from '../../../src/package/structure/plan';

function after(act: Parameters<typeof planOf>[0], formula: string, from = 'S'): string {
  const plan = planOf(act);
  const how: Rewriting = { from, to: from, area: (sheet, area) => plan.area(sheet, area) };
  return rewriteFormula(formula, how);
}

const insertRows = (at: number, count = 1) =>
  ({ do: 'insert', what: 'rows', sheet: 'S', at: at - 1, count }) as const;
const deleteRows = (at: number, count = 1) =>
  ({ do: 'delete', what: 'rows', sheet: 'S', at: at - 1, count }) as const;

describe('a formula after rows were inserted before row 3', () => {
  it.each([
    ['A1+A3', 'A1+A4'],
    ['$A$3+A$3+$A3', '$A$4+A$4+$A4'],
    ['SUM(A1:A2)', 'SUM(A1:A2)'],
    ['SUM(A1:A3)', 'SUM(A1:A4)'],
    ['SUM(A3:A9)', 'SUM(A4:A10)'],
    ['SUM(A9:A3)', 'SUM(A10:A4)'],
    ['SUM(B:B)', 'SUM(B:B)'],
    ['SUM(2:5)', 'SUM(2:6)'],
    ['SUM($3:$3)', 'SUM($4:$4)'],
    ['S!A5', 'S!A6'],
    ['Other!A5', 'Other!A5'],
    ["'S'!A5", "'S'!A6"],
    ['"A5 and A6"&A5', '"A5 and A6"&A6'],
    ['LOG10(A5)', 'LOG10(A6)'],
    ['[1]S!A5', '[1]S!A5'],
    ["'[Book.xlsx]S'!A5", "'[Book.xlsx]S'!A5"],
    ['Tbl1[A5]', 'Tbl1[A5]'],
    ['A5:INDEX(B:B,4)', 'A6:INDEX(B:B,4)'],
    ['First:S!A5', 'First:S!A5'],
    ['A1048576', '#REF!'],
    ['A5#', 'A6#'],
    ['-A5%', '-A6%'],
    ['A5 A6', 'A6 A7'],
    ['IF(A5>=1.10,"a","b")', 'IF(A6>=1.10,"a","b")'],
  ])('%s reads %s', (before, then) => {
    expect(after(insertRows(3), before)).toBe(then);
  });

  it('on another sheet follows only what names the sheet', () => {
    expect(after(insertRows(3), 'A5+S!A5+S!A1', 'Other')).toBe('A5+S!A6+S!A1');
  });
});

describe('a formula after rows 3 and 4 were deleted', () => {
  it.each([
    ['A3', '#REF!'],
    ['A2+A5', 'A2+A3'],
    ['SUM(A1:A9)', 'SUM(A1:A7)'],
    ['SUM(A3:A9)', 'SUM(A3:A7)'],
    ['SUM(A1:A3)', 'SUM(A1:A2)'],
    ['SUM(A3:A4)', 'SUM(#REF!)'],
    ['SUM(1:3)', 'SUM(1:2)'],
    ['S!A3', '#REF!'],
  ])('%s reads %s', (before, then) => {
    expect(after(deleteRows(3, 2), before)).toBe(then);
  });
});

describe('a formula after cells alone moved', () => {
  const area = parseArea('B3:C4') as NonNullable<ReturnType<typeof parseArea>>;

  it('follows what lies below them, and leaves what reaches beyond them', () => {
    const act = { do: 'insertCells', sheet: 'S', area, shift: 'rows' } as const;
    expect(after(act, 'B3+A3+SUM(B1:C9)+SUM(A1:C9)')).toBe('B5+A3+SUM(B1:C11)+SUM(A1:C9)');
  });

  it('follows a block that was cut and pasted, and loses what it was pasted over', () => {
    const act = { do: 'moveCells', sheet: 'S', area, to: { sheet: 'S', row: 9, column: 4 } } as const;
    expect(after(act, 'B3+SUM(B3:C4)+SUM(B3:C5)+E10+D10')).toBe('E10+SUM(E10:F11)+SUM(B3:C5)+#REF!+D10');
  });

  it('names the sheet that a block went to', () => {
    const act = { do: 'moveCells', sheet: 'S', area, to: { sheet: 'My sheet', row: 0, column: 0 } } as const;
    expect(after(act, 'B3+D9')).toBe("'My sheet'!A1+D9");
  });

  it('follows rows that changed places', () => {
    const act = { do: 'moveRows', sheet: 'S', at: 1, count: 2, to: 6 } as const;
    expect(after(act, 'A2+A3+A4+A6+A7')).toBe('A5+A6+A2+A4+A7');
  });
});

describe('a formula after a sheet', () => {
  const rename = (formula: string, from = 'A', to = 'New part'): string =>
    rewriteFormula(formula, {
      from: 'X',
      to: 'X',
      area: (sheet, area) => ({ ...area, sheet: sheet === from ? to : sheet }),
      span: (first, last) => [first === from ? to : first, last === from ? to : last],
    });

  it.each([
    ['A!B2+B!B2', "'New part'!B2+B!B2"],
    ["SUM('A'!B2:B9)", "SUM('New part'!B2:B9)"],
    ['SUM(A:C!B2)', "SUM('New part:C'!B2)"],
    ['A!draft', "'New part'!draft"],
    ['"A!B2"', '"A!B2"'],
  ])('was renamed: %s reads %s', (before, then) => {
    expect(rename(before)).toBe(then);
  });
});

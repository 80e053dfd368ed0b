import { describe, expect, it, vi } from 'vitest';
import { takeLarge } from '../../src/page/largePastes';
import { pastedCell, tableOf } from '../../src/page/pasteTable';

vi.stubGlobal('localStorage', { setItem: () => undefined });

describe('a text table of the clipboard', () => {
  it('is read line by line, blank fields and quotation marks too', () => {
    expect(tableOf('a\tb\r\nc\td\r\n')).toEqual([
      ['a', 'b'],
      ['c', 'd'],
    ]);
    expect(tableOf('\t1\t\n\n2')).toEqual([['', '1', ''], [''], ['2']]);
    expect(tableOf('"two\nlines"\t"a ""b"" c"')).toEqual([['two\nlines', 'a "b" c']]);
  });

  it('keeps inch marks, and marks that nothing closes', () => {
    expect(tableOf('13/64"\t1/4"\n"open\t5')).toEqual([
      ['13/64"', '1/4"'],
      ['"open', '5'],
    ]);
  });

  it('holds what would have been typed', () => {
    const read = (text: string) => {
      const { v, f, s } = pastedCell(text);
      return f ?? [v, s?.n.pattern];
    };
    expect(read('5/8')).toEqual([0.625, '?/8']);
    expect(read('10-24')).toEqual(['10-24', undefined]);
    expect(read('M6x1')).toEqual(['M6x1', undefined]);
    expect(read('-1.5')).toEqual([-1.5, undefined]);
    expect(read('=A1*2')).toBe('=A1*2');
    expect(read('')).toEqual([null, undefined]);
    expect(read('TRUE')).toEqual([1, undefined]);
  });
});

describe('a paste', () => {
  const paste = (text: string, html = '', row = 0) => {
    const desk = { corner: () => ({ row, column: 0 }), write: vi.fn(), tell: vi.fn() };
    return { isTaken: takeLarge(html, text, desk), ...desk };
  };
  const lines = (count: number) => 'x\ty\n'.repeat(count);

  it('of few cells is the grid’s', () => {
    expect(paste(lines(10))).toMatchObject({ isTaken: false });
  });

  it('of 100,000 cells is taken whole', () => {
    const { isTaken, write, tell } = paste(lines(50_000));
    expect(isTaken).toBe(true);
    expect(write.mock.calls[0]?.[0]).toHaveLength(50_000);
    expect(tell).not.toHaveBeenCalled();
  });

  it('of more than can be had, or than fits below, is left in words', () => {
    const many = paste(lines(300_000));
    expect(many.tell.mock.calls[0]?.[0]).toMatch(/600,000 cells; at most 500,000 .* Nothing was changed/);
    const low = paste(lines(10_000), '', 1_048_570);
    expect(low.tell.mock.calls[0]?.[0]).toMatch(
      /10,000 rows and 2 columns do not fit .* Nothing was changed/,
    );
    for (const { write, isTaken } of [many, low]) {
      expect(write).not.toHaveBeenCalled();
      expect(isTaken).toBe(true);
    }
  });

  it('whose table lost its cells on the way is taken as the text that came with it', () => {
    expect(paste('5', '<table><tr><td>').write.mock.calls).toEqual([[[['5']]]]);
    expect(paste('5', '<table><tr><td>5')).toMatchObject({ isTaken: false });
  });

  it('of many cells of the grid’s own, formulas among them, is never taken as texts', () => {
    const own = '<table data-copy-id="1"><tr><td>x</td></tr></table>';
    expect(paste(lines(20_000), own)).toMatchObject({ isTaken: false });
    const { write, tell } = paste(lines(50_000), own);
    expect(write).not.toHaveBeenCalled();
    expect(tell.mock.calls[0]?.[0]).toMatch(/at most 50,000/);
  });
});

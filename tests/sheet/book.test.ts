import { describe, expect, it } from 'vitest';
import { type Area, parseArea, parseCell } from '../../src/cells/address';
import { CellError, type CellValue } from '../../src/cells/value';
import { Book } from '../../src/sheet/book';
import type { BookCell, BookContent, BookSheet } from '../../src/sheet/content';
import { fakes } from '../whatif/fakes';

type Typed = Readonly<Record<string, CellValue>>;

/** A sheet as it is typed; formulas under `old` are of the time before spills. */
function sheet(name: string, typed: Typed, old: Typed = {}, more: Partial<BookSheet> = {}): BookSheet {
  const cell =
    (isOld: boolean) =>
    ([address, value]: [string, CellValue]): BookCell => {
      const place = parseCell(address);
      if (!place) throw new Error(address);
      if (typeof value !== 'string' || !value.startsWith('=')) return { ...place, value };
      const formula = value.slice(1);
      const spill = parseArea(address);
      return { ...place, value: null, formula, ...(!isOld && spill && { spill }) };
    };
  const cells = [...Object.entries(typed).map(cell(false)), ...Object.entries(old).map(cell(true))];
  return { name, cells, tables: [], rows: [], ...more };
}

function book(sheets: readonly BookSheet[], more: Partial<BookContent> = {}): Book {
  const made = new Book({ sheets, names: [], date1904: false, ...more }, fakes);
  made.calculate({ time: 20_000 });
  return made;
}

const text = (value: CellValue): CellValue =>
  value instanceof CellError ? `${value.code} ${value.message}` : value;

/** The values of some cells of the first sheet. */
function shown(made: Book, addresses: string, sheetIndex = 0): CellValue[] {
  return addresses.split(' ').map((address) => {
    const { row, column } = parseCell(address) ?? { row: 0, column: 0 };
    return text(made.value(sheetIndex, row, column));
  });
}

/** What a formula gives that is typed beside some cells; of an error its code. */
const gives = (formula: string, cells: Typed = {}): CellValue => {
  const value = book([sheet('Main', { ...cells, Z9: formula })]).value(0, 8, 25);
  return value instanceof CellError ? value.code : value;
};

describe('literals and operators', () => {
  it.each([
    ['=-2^2', 4],
    ['=2^3^2', 64],
    ['=2.50+1.0', 3.5],
    ['=IF(3>1.0,"yes","no")', 'yes'],
    ['=SUM({2.0,3})', 5],
    ['=.5+1E-3', 0.501],
    ['=50%%', 0.005],
    ['=-50%', -0.5],
    ['=1&2+3', '15'],
    ['="a"&TRUE', 'aTRUE'],
    ['="2"*"3"', 6],
    ['=1=1=TRUE', true],
    ['="A"="a"', true],
    ['=1<"a"', true],
    ['="z"<TRUE', true],
    ['=0.1+0.2=0.3', true],
    ['=0.1+0.2-0.3', 0],
    ['=0^0', '#NUM!'],
    ['=1/0', '#DIV/0!'],
    ['="x"+1', '#VALUE!'],
    ['=A1+1', 1],
    ['=A1=""', true],
    ['=A1=0', true],
    ['=SUM((A1:B2,B2:B3))', 0],
    ['=1E3', 1000],
    ['=10*5%', 0.5],
    ['="1/2"&""', '1/2'],
    ['=--"5"', 5],
  ])('%s is %s', (formula, value) => {
    expect(gives(formula)).toBe(value);
  });

  it('take ranges apart, meet and join them', () => {
    const cells = { A1: 1, A2: 2, B1: 10, B2: 20 };
    expect(gives('=SUM(A1:B1 B1:B2)', cells)).toBe(10);
    expect(gives('=A1:A2 B1:B2', cells)).toBe('#NULL!');
    expect(gives('=SUM((A1,B2))', cells)).toBe(21);
    expect(gives('=SUM(A1:INDEX(B1:B2,2))', cells)).toBe(33);
    expect(gives('=SUM(A:A)', cells)).toBe(3);
    expect(gives('=SUM(1:1)', cells)).toBe(11);
  });
});

describe('an old formula', () => {
  it('takes the cell in its own row or column of a range', () => {
    const made = book([
      sheet('Main', { A1: 1, A2: 2, A3: 3 }, { B2: '=A1:A3*10', B3: '=A1:A3', B5: '=A1:A3+1' }),
    ]);
    expect(shown(made, 'B2 B3 B5')).toEqual([20, 3, expect.stringMatching(/^#VALUE!/)]);
  });

  it('counts a whole range where a function takes arrays', () => {
    const made = book([
      sheet('Main', { A1: 1, A2: 2, A3: 3 }, { C9: '=SUMPRODUCT(A1:A3*A1:A3)', C10: '=INDEX(ROW(A1:A3),2)' }),
    ]);
    expect(shown(made, 'C9 C10')).toEqual([14, 2]);
  });
});

describe('an array', () => {
  it('spills, and shrinks when it becomes smaller', () => {
    const made = book([sheet('Main', { A1: 3, B1: '=SEQUENCE(A1)*2', C1: '=SUM(B1:B9)', D1: '=SUM(B1#)' })]);
    expect(shown(made, 'B1 B2 B3 B4 C1 D1')).toEqual([2, 4, 6, null, 12, 12]);
    made.set([{ sheet: 0, row: 0, column: 0, value: 2 }]);
    made.calculate();
    expect(shown(made, 'B1 B2 B3 C1 D1')).toEqual([2, 4, null, 6, 6]);
    made.set([{ sheet: 0, row: 0, column: 0, value: 4 }]);
    made.calculate();
    expect(shown(made, 'B4 C1 D1')).toEqual([8, 20, 20]);
  });

  it('is refused where a cell is in the way, and comes once that is cleared', () => {
    const made = book([sheet('Main', { A1: '=SEQUENCE(3)', A3: 'taken', B1: '=A1' })]);
    expect(shown(made, 'A1 B1')).toEqual([
      '#SPILL! The result needs more cells than are free: clear A3.',
      '#SPILL! Main!A1: The result needs more cells than are free: clear A3.',
    ]);
    made.set([{ sheet: 0, row: 2, column: 0, value: null }]);
    made.calculate();
    expect(shown(made, 'A1 A2 A3 B1')).toEqual([1, 2, 3, 1]);
    made.set([{ sheet: 0, row: 1, column: 0, value: 7 }]);
    made.calculate();
    expect(shown(made, 'A1 A2 A3')[0]).toMatch(/^#SPILL!/);
    expect(shown(made, 'A2 A3')).toEqual([7, null]);
  });

  it('is refused where it would fill merged cells, a single value is not', () => {
    const merges = ['B2:C2', 'E1:F1'].map((text) => parseArea(text) as Area);
    const made = book([
      sheet('Main', { A1: '=SEQUENCE(2,2)', E1: '=SEQUENCE(1)', H1: '=SEQUENCE(2)' }, {}, { merges }),
    ]);
    expect(shown(made, 'A1 E1 H2')).toEqual([
      '#SPILL! The result would fill merged cells: take the merge of B2:C2 apart.',
      1,
      2,
    ]);
  });

  it('that is too large to show is refused in its own cell', () => {
    const made = book([sheet('Main', { A1: '=SEQUENCE(1048576)', D1: '=ROWS(SEQUENCE(1048576))' })]);
    expect(shown(made, 'A1')[0]).toMatch(/^#SPILL! A result may fill 262144 cells/);
    expect(shown(made, 'A2 D1')).toEqual([null, 1048576]);
  });

  it('of the old kind fills its fixed cells', () => {
    const cells: BookCell[] = [
      {
        row: 0,
        column: 0,
        value: null,
        formula: '{1;2}*2',
        spill: { top: 0, left: 0, bottom: 2, right: 1 },
        fixedArray: true,
      },
    ];
    expect(shown(book([{ name: 'Main', cells, tables: [], rows: [] }]), 'A1 B1 A2 A3')).toEqual([
      2,
      2,
      4,
      expect.stringMatching(/^#N\/A/),
    ]);
  });

  it('goes into functions of the former add-in, several cells of a range do not', () => {
    const cells: Typed = { A1: 1, A2: 2 };
    expect(
      ['SUM(--ISEVEN(+A1:A2))', 'SUM(EDATE({40000,40010},1))', 'QUOTIENT(A2,A1)'].map((f) =>
        gives(`=${f}`, cells),
      ),
    ).toEqual([1, 80072, 2]);
    for (const formula of [
      'ISODD(A1:A2)',
      'SUM(--ISEVEN(A1:A2))',
      'COMPLEX(A1:A2,1)',
      'EDATE(A1:A2,1)',
      'BESSELJ(TRUE,1)',
    ]) {
      expect(gives(`=${formula}`, cells), formula).toBe('#VALUE!');
    }
  });

  it('lifts what takes single values, also a whole column', () => {
    expect(gives('=SUM(ROUND({1.26,2.34},1))')).toBeCloseTo(3.6, 12);
    expect(gives('=SUM(--(A:A>1))', { A1: 1, A2: 2, A3: 3 })).toBe(2);
    expect(gives('=SUM(IF({1,0,1},{10,20,30},1))')).toBe(41);
    expect(gives('=ROWS(A:A*2)')).toBe(1048576);
    expect(gives('=SUM(IFERROR({1,#N/A,3},10))')).toBe(14);
    expect(gives('=CONCAT({1,2}&{"a";"b"})')).toBe('1a2a1b2b');
  });
});

describe('LET and LAMBDA', () => {
  it.each([
    ['=LET(x,2,y,x+1,x*y)', 6],
    ['=LAMBDA(a,b,a-b)(5,3)', 2],
    ['=LET(f,LAMBDA(x,x*2),f(f(3)))', 12],
    ['=SUM(MAP({1,2,3},LAMBDA(x,x^2)))', 14],
    ['=REDUCE(0,{1,2,3},LAMBDA(a,x,a*10+x))', 123],
    ['=SUM(SCAN(0,{1,2,3},LAMBDA(a,x,a+x)))', 10],
    ['=SUM(BYROW({1,2;3,4},LAMBDA(r,MAX(r))))', 6],
    ['=SUM(BYCOL({1,2;3,4},SUM))', 10],
    ['=SUM(MAKEARRAY(2,3,LAMBDA(r,c,r*c)))', 18],
    ['=LAMBDA(x,[y],IF(ISOMITTED(y),x,x+y))(4)', 4],
    ['=LAMBDA(x,[y],IF(ISOMITTED(y),x,x+y))(4,3)', 7],
    ['=LET(x,1,LET(x,x+1,x)*10+x)', 21],
    ['=LAMBDA(a,a)(1,2)', '#VALUE!'],
    ['=LAMBDA(a,a)', '#CALC!'],
  ])('%s is %s', (formula, value) => {
    expect(gives(formula)).toBe(value);
  });

  it('may call itself by a name, but not for ever', () => {
    const names = [
      { name: 'FACTORIAL', formula: 'LAMBDA(n,IF(n<2,1,n*FACTORIAL(n-1)))' },
      { name: 'ENDLESS', formula: 'LAMBDA(n,ENDLESS(n+1))' },
    ];
    const made = book(
      [sheet('Main', { A1: '=FACTORIAL(5)', A2: '=ENDLESS(1)', A3: '=1+1', A4: '=FACTORIAL(150)>0' })],
      { names },
    );
    expect(shown(made, 'A1 A2 A3 A4')).toEqual([120, '#NUM! LAMBDAs call one another too deeply.', 2, true]);
  });
});

describe('references', () => {
  const cells = { A1: 5, A2: 6, A3: 7, B1: 'A2', B2: 2 };
  it.each([
    ['=INDIRECT(B1)', 6],
    ['=SUM(INDIRECT("A1:A"&B2))', 11],
    ['=SUM(OFFSET(A1,1,0,2))', 13],
    ['=SUM(OFFSET(A1,1,0,2,))', 13],
    ['=OFFSET(A3,-1,0)', 6],
    ['=OFFSET(A1,-1,0)', '#REF!'],
    ['=SUM(CHOOSE(2,B1,A1:A3))', 18],
    ['=SUM(IF(TRUE,A1:A2,A3))', 11],
    ['=ROWS(A1:B7)', 7],
    ['=ROW()', 9],
    ['=COLUMN(C5)', 3],
    ['=AREAS((A1,B1))', 2],
    ['=ISREF(A1)', true],
    ['=INDIRECT("R2C1",FALSE)', 6],
    ['=INDIRECT("nothing here")', '#REF!'],
    ['=FORMULATEXT(Z9)', '=FORMULATEXT(Z9)'],
    ['=SUM(INDEX(A1:B3,0,1))', 18],
    ['=CELL("address",B2)', '$B$2'],
  ])('%s is %s', (formula, value) => {
    expect(shown(book([sheet('Main', { ...cells, Z9: formula })]), 'Z9')[0]).toEqual(
      typeof value === 'string' && value.startsWith('#') ? expect.stringContaining(value) : value,
    );
  });

  it('go through several sheets, and to names of one sheet', () => {
    const made = book(
      [
        sheet('Sum', { A1: '=SUM(One:Three!A1)', A2: '=rate', A3: '=Two!rate', A4: "='Last one'!A1" }),
        sheet('One', { A1: 1, B1: '=rate' }),
        sheet('Two', { A1: 2, B1: '=rate*2' }),
        sheet('Three', { A1: 4 }),
        sheet('Last one', { A1: 'end' }),
      ],
      {
        names: [
          { name: 'rate', formula: '10' },
          { name: 'Rate', formula: 'Two!$A$1', sheet: 'Two' },
        ],
      },
    );
    expect(shown(made, 'A1 A2 A3 A4')).toEqual([7, 10, 2, 'end']);
    expect(shown(made, 'B1', 1)).toEqual([10]);
    expect(shown(made, 'B1', 2)).toEqual([4]);
  });

  it('to tables know any header, the row, the totals and several columns', () => {
    const tables = [
      {
        name: 'My_Tbl.1',
        area: { top: 0, left: 0, bottom: 3, right: 2 },
        hasHeader: true,
        hasTotals: true,
        columns: ['Qty', 'Size [mm]', "it's #1"],
      },
    ];
    const made = book([
      sheet(
        'Main',
        {
          A1: 'Qty',
          B1: 'Size [mm]',
          C1: "it's #1",
          A2: 1,
          B2: 10,
          C2: '=[@Qty]*2',
          A3: 2,
          B3: 20,
          C3: '=My_Tbl.1[[#This Row],[Qty]]*2',
          A4: '=SUBTOTAL(9,My_Tbl.1[Qty])',
          B4: 99,
          E1: '=SUM(My_Tbl.1[Qty])',
          E2: "=SUM(My_Tbl.1[Size '[mm']])",
          E3: "=SUM(My_Tbl.1[it''s '#1])",
          E4: '=My_Tbl.1[[#Totals],[Qty]]',
          E5: "=SUM(My_Tbl.1[[Qty]:[Size '[mm']]])",
          E6: '=INDEX(My_Tbl.1,2,2)',
          E7: '=My_Tbl.1[[#Headers],[Qty]]',
          E8: '=ROWS(My_Tbl.1[#All])',
          E9: '=My_Tbl.1[Nope]',
        },
        {},
        { tables },
      ),
    ]);
    expect(shown(made, 'C2 C3 A4 E1 E2 E3 E4 E5 E6 E7 E8')).toEqual([2, 4, 3, 3, 30, 6, 3, 33, 20, 'Qty', 4]);
    expect(shown(made, 'E9')[0]).toMatch(/^#REF! My_Tbl.1 has no column/);
  });
});

describe('an error', () => {
  it('of ours says where it began in every cell that it reaches', () => {
    const made = book([
      sheet('Main', {
        B7: '=MOLD.HALF("x")',
        C1: '=B7+1',
        C2: '=C1*2',
        C3: '=IFERROR(C2,7)',
        C4: '=1/0',
        C5: '=C4',
      }),
    ]);
    expect(shown(made, 'B7 C1 C2 C3 C4 C5')).toEqual([
      '#VALUE! x: "x" is not a number.',
      '#VALUE! Main!B7: x: "x" is not a number.',
      '#VALUE! Main!B7: x: "x" is not a number.',
      7,
      '#DIV/0! A division by zero or by a blank cell.',
      '#DIV/0! Main!C4: A division by zero or by a blank cell.',
    ]);
  });

  it('says that a formula reads its own result, however it comes about', () => {
    const made = book([
      sheet('Main', {
        A1: '=A2',
        A2: '=A1+1',
        A3: '=A1',
        B1: '=ROW(B1)',
        B2: '=IF(TRUE,1,B2)',
        C1: '=SUM(C1:C3)',
        D1: '=INDIRECT("D1")',
        E1: '=IFERROR(E2,1)',
        E2: '=E1',
      }),
    ]);
    const circle = '#REF! The formula depends on its own result: break the circle.';
    expect(shown(made, 'A1 A2 B1 B2 C1 D1 E1 E2')).toEqual([
      circle,
      circle,
      1,
      1,
      circle,
      circle,
      circle,
      circle,
    ]);
    expect(shown(made, 'A3')[0]).toMatch(/^#REF! Main!A1: The formula depends/);
    made.set([{ sheet: 0, row: 1, column: 0, value: 7 }]);
    made.calculate();
    expect(shown(made, 'A1 A3')).toEqual([7, 7]);
  });
});

describe('what cannot be calculated', () => {
  const stored = (formula: string, value: CellValue): BookCell => ({ row: 0, column: 0, formula, value });
  const kept = (formula: string, value: CellValue, more: Partial<BookContent> = {}) =>
    book(
      [
        {
          name: 'Main',
          cells: [
            stored(formula, value),
            { row: 0, column: 1, formula: 'A1*2', value: 1 },
            { row: 8, column: 0, value: 1 },
          ],
          tables: [],
          rows: [],
        },
      ],
      more,
    );

  it('keeps its stored value with the reason, and what depends on it is calculated', () => {
    const made = kept('FORECAST.ETS(A9,B9,C9)', 21);
    expect(shown(made, 'A1 B1')).toEqual([21, 42]);
    expect(made.keptCells()).toEqual([
      { sheet: 0, row: 0, column: 0, reason: 'There is no function or name FORECAST.ETS.' },
    ]);
    expect(kept('[1]Sheet1!A1', 21).keptReason(0, 0, 0)).toMatch(/another workbook/);
    expect(kept('1+', 21).keptReason(0, 0, 0)).toMatch(/cannot be read/);
    expect(kept('A1+1', 21, { iterates: true }).keptReason(0, 0, 0)).toMatch(/own result/);
  });

  it('counts characters above 127 only where no Macintosh has counted them by its own table', () => {
    const macintosh = (formula: string, stored: CellValue) =>
      kept(formula, stored, { isFromMacintosh: true });
    for (const [formula, stored] of [
      ['CHAR(128)', 'Ä'],
      ['CODE("Ä")', 128],
      ['UNICODE(CHAR(128))', 196],
      ['IFERROR(CHAR(128),"")', 'Ä'],
    ] as const) {
      const made = macintosh(formula, stored);
      expect(shown(made, 'A1')).toEqual([stored]);
      expect(made.keptReason(0, 0, 0)).toMatch(/Macintosh/);
      expect(kept(formula, stored).keptReason(0, 0, 0)).toBeUndefined();
    }
    expect(shown(macintosh('CHAR(65)&CODE("a")&UNICHAR(196)', 'stale'), 'A1')).toEqual(['A97Ä']);
  });

  it('is in error once what it reads was edited, and where it was typed', () => {
    const made = kept('FORECAST.ETS(A9,B9,C9)', 21);
    made.set([{ sheet: 0, row: 8, column: 0, value: 2 }]);
    made.calculate();
    expect(shown(made, 'A1')).toEqual(['#NAME? There is no function or name FORECAST.ETS.']);
    expect(made.keptCells()).toEqual([]);
    expect(gives('=NOPE(1)')).toBe('#NAME?');
  });

  it('is in error where one of our functions is in it', () => {
    expect(shown(kept('MOLD.NOPE(1)', 21), 'A1')[0]).toMatch(
      /^#NAME\? There is no function MOLD\.NOPE; nearest: MOLD\./,
    );
  });
});

describe('hostile workbooks', () => {
  it('end, and leave the rest right', () => {
    const made = book([
      sheet('Main', {
        A1: '=REPT("x",1E9)',
        A2: '=SUM(MAKEARRAY(1E5,1E5,LAMBDA(r,c,r)))',
        A3: `=${'('.repeat(5000)}1${')'.repeat(5000)}`,
        A4: `=${Array.from({ length: 4000 }, () => 'B1').join('+')}`,
        A5: '=1+1',
        B1: 1,
        XFD1048576: 2,
        A6: '=SUM(A1048576:XFD1048576)',
      }),
    ]);
    expect(shown(made, 'A1 A2 A3').map((value) => String(value).slice(0, 5))).toEqual([
      '#VALU',
      '#NUM!',
      '#NAME',
    ]);
    expect(shown(made, 'A4 A5 A6')).toEqual([4000, 2, 2]);
  });

  it('may be chains of many cells, forwards, backwards and through OFFSET', () => {
    const size = 20_000;
    const cells: BookCell[] = [];
    for (let row = 0; row < size; row++) {
      const isFirst = row === 0;
      const isLast = row === size - 1;
      cells.push({ row, column: 0, value: isFirst ? 1 : null, ...(!isFirst && { formula: `A${row}+1` }) });
      cells.push({ row, column: 1, value: isLast ? 1 : null, ...(!isLast && { formula: `B${row + 2}+1` }) });
      cells.push({
        row,
        column: 2,
        value: isLast ? 1 : null,
        ...(!isLast && { formula: `OFFSET(C${row + 1},1,0)+1` }),
      });
    }
    const made = book([{ name: 'Main', cells, tables: [], rows: [] }]);
    expect([made.value(0, size - 1, 0), made.value(0, 0, 1), made.value(0, 0, 2)]).toEqual([
      size,
      size,
      size,
    ]);
  });

  it('may be stopped', () => {
    const made = new Book(
      {
        sheets: [
          sheet('Main', { A1: '=1+1', A2: '=SUM(MAKEARRAY(2000,2000,LAMBDA(r,c,SUM(SEQUENCE(50)))))' }),
        ],
        names: [],
        date1904: false,
      },
      [],
    );
    expect(() => made.calculate({ time: 50 })).toThrow('took longer than 0.05 s');
    expect(made.value(0, 0, 0)).toBe(2);
    expect(made.value(0, 1, 0)).toBeInstanceOf(CellError);
    expect([made.isUnreached(0, 0, 0), made.isUnreached(0, 1, 0)]).toEqual([false, true]);
  });
});

describe('our functions', () => {
  it('get cells and array constants as they were written', () => {
    const cells = { A1: 0.1, A2: '10-32', A3: true, B3: new CellError('#N/A') };
    expect(gives('=mold.seen(A1:B3,{1,"1/2";TRUE,#N/A},"t",TRUE,,A9)', cells)).toBe(
      '[[[0.1,null],["10-32",null],[true,"#N/A"]],[[1,"1/2"],[true,"#N/A"]],[["t"]],[[true]],"omitted",[[null]]]',
    );
  });
});

describe('a workbook that counts its days from 1904', () => {
  it.each([
    ['=DATE(1904,1,1)', 0],
    ['=DATE(2026,1,1)', 46023 - 1462],
    ['=YEAR(A1)', 1904],
    ['=MONTH("1904-02-01")', 2],
    ['="1904-01-02"+0', 1],
    ['=TEXT(A1,"yyyy-mm-dd")', '1904-01-01'],
    ['=EDATE(A1,1)', 31],
    ['=WEEKDAY(A1)', 6],
  ])('%s is %s', (formula, expected) => {
    const made = book([sheet('Main', { A1: 0, Z9: formula })], { date1904: true });
    expect(shown(made, 'Z9')).toEqual([expected]);
  });
});

describe('hidden rows', () => {
  it('count for SUBTOTAL and AGGREGATE as they should', () => {
    const rows = [
      { row: 0, hidden: true },
      { row: 5, hidden: true },
    ];
    const made = book([
      sheet(
        'Main',
        {
          A1: 1,
          A2: 2,
          A6: 4,
          A7: '=SUBTOTAL(9,A1:A2)',
          B1: '=SUBTOTAL(9,A1:A7)',
          B2: '=SUBTOTAL(109,A1:A7)',
          B3: '=AGGREGATE(9,5,A1:A6)',
          B4: '=AGGREGATE(14,6,A1:A6/(A1:A6>1),1)',
        },
        {},
        { rows, filters: [{ top: 4, left: 0, bottom: 8, right: 0 }] },
      ),
    ]);
    expect(shown(made, 'B1 B2 B3 B4')).toEqual([3, 2, 2, 4]);
  });
});

import { describe, expect, it } from 'vitest';
import { Book } from '../../src/sheet/book';
import { contentOf } from '../../src/workbook/content';
import { recalculate } from '../../src/workbook/recalculate';
import type { FormulaResult } from '../../src/workbook/recalculate';
import { CellError } from '../../src/cells/value';
import { cellAddress } from '../../src/cells/address';
import { fakes, sheet, values, workbook } from '../whatif/fakes';

async function run(...args: Parameters<typeof workbook>): Promise<FormulaResult[]> {
  return recalculate(workbook(...args), fakes);
}

/** One sheet, its values by address. */
async function shows(typed: Parameters<typeof sheet>[1]): Promise<Record<string, unknown>> {
  return values(await run([sheet('Main', typed)]));
}

describe('a function in a formula', () => {
  it('gets a left-out argument as omitted and a blank cell as a 1 × 1 blank', async () => {
    const { B1 } = await shows({ B1: '=MOLD.SEEN(1,,A9,)' });
    expect(B1).toBe('[[[1]],"omitted",[[null]],"omitted"]');
  });

  it('gets ranges, array constants, text, booleans and errors as they are', async () => {
    const { D1 } = await shows({
      A1: 0.1,
      A2: '10-32',
      A3: true,
      B3: new CellError('#N/A'),
      D1: '=mold.seen(A1:B3,{1,"a";TRUE,#N/A},"t",TRUE,1/0,1E-7)',
    });
    expect(D1).toBe(
      '[[[0.1,null],["10-32",null],[true,"#N/A"]],[[1,"a"],[true,"#N/A"]],[["t"]],[[true]],[["#DIV/0!"]],[[1e-7]]]',
    );
  });

  it('is known by its dotted name in any case and nested in native functions', async () => {
    const { B1 } = await shows({ A1: 3, B1: '=ROUND(Mold.Half(LET(x,A1,x*2))+SUM(MOLD.HALF(A1:A1)),3)' });
    expect(B1).toBe(4.5);
  });

  it('answers with full double precision', async () => {
    const { B1 } = await shows({ A1: 2 / 3, B1: '=MOLD.HALF(A1)' });
    expect(B1).toBe(1 / 3);
  });

  it('may be called without arguments and says itself what is missing', async () => {
    expect(await shows({ A1: '=MOLD.HALF()' })).toEqual({ A1: '#VALUE! x is missing.' });
  });

  it('that throws leaves its own cell in error and everything else calculated', async () => {
    const { A1, A2 } = await shows({ A1: '=MOLD.FAULT()', A2: '=1+1' });
    expect(A1).toMatch(/^#VALUE! MOLD\.FAULT failed.*slipped/);
    expect(A2).toBe(2);
  });
});

describe('a spilling formula', () => {
  it('fills the cells beside and below, and others can refer to them', async () => {
    const shown = await shows({
      A1: '=MOLD.HALF({2,4;6,8})',
      D1: '=SUM(A1:B2)',
      D2: '=SUM(ANCHORARRAY(A1))',
    });
    expect(shown).toEqual({ A1: 1, B1: 2, A2: 3, B2: 4, D1: 10, D2: 10 });
  });

  it('replaces what an earlier result left in the file, however large that was', async () => {
    const before = sheet('Main', { A1: '=MOLD.HALF({2;4})', A2: 77, A3: 88 }, { spills: ['A1:A3'] });
    expect(await run([before])).toEqual([
      {
        sheet: 'Main',
        row: 0,
        column: 0,
        formula: 'MOLD.HALF({2;4})',
        before: null,
        value: 1,
        changed: true,
        spill: [[1], [2]],
        because: [],
      },
    ]);
  });

  it('is refused where a cell is in the way, and says so', async () => {
    const [result] = await run([sheet('Main', { A1: '=MOLD.HALF({2;4})', A2: 'taken' })]);
    expect(result?.value).toEqual(new CellError('#SPILL!', expect.stringMatching(/clear/) as string));
    expect(result?.spill).toBeUndefined();
  });

  it('keeps the message of each of its cells', async () => {
    const shown = await shows({ A1: 'no', A2: 4, A3: 'nor this', B1: '=MOLD.HALF(A1:A3)' });
    expect(shown).toMatchObject({
      B1: '#VALUE! x: "no" is not a number.',
      B2: 2,
      B3: '#VALUE! x: "nor this" is not a number.',
    });
  });
});

describe('an error', () => {
  const messages = async (typed: Parameters<typeof sheet>[1]) =>
    Object.fromEntries(
      (await run([sheet('Main', typed)])).flatMap(({ row, column, value }) =>
        value instanceof CellError ? [[cellAddress(row, column), `${value.code} ${value.message}`]] : [],
      ),
    );

  it('keeps its message inside a larger formula', async () => {
    expect(await messages({ A1: '=1+MOLD.HALF("x")*2' })).toEqual({ A1: '#VALUE! x: "x" is not a number.' });
  });

  it('names the cell that it was passed on from', async () => {
    expect(await messages({ A1: '=MOLD.HALF("x")', A2: '=A1+1', A3: '=MOLD.HALF(A1)' })).toMatchObject({
      A2: '#VALUE! Main!A1: x: "x" is not a number.',
      A3: '#VALUE! Main!A1: x: "x" is not a number.',
    });
  });

  it('of a native function is put in words', async () => {
    expect(await messages({ A1: '=1/0', A2: '=NOPE(1)', A3: '=MOLD.NOPE(1)', A4: '=1+' })).toMatchObject({
      A1: expect.stringMatching(/^#DIV\/0! A division/) as string,
      A2: '#NAME? There is no function or name NOPE.',
      A3: expect.stringMatching(/^#NAME\? There is no function MOLD\.NOPE; nearest: MOLD\./) as string,
      A4: expect.stringMatching(/^#/) as string,
    });
  });

  it('that a formula caught is none', async () => {
    expect(await messages({ A1: '=IFERROR(MOLD.HALF("x"),7)' })).toEqual({});
  });

  it('is what a formula gets that depends on itself', async () => {
    const { A1, A2, A3, A4 } = await messages({
      A1: '=MOLD.HALF(A2)',
      A2: '=A1+B1',
      A3: '=A1',
      A4: '=B1',
      B1: '=1',
    });
    expect(A1).toMatch(/^#REF! The formula depends on its own result/);
    expect(A2).toBe(A1);
    expect(A3).toMatch(/^#REF! Main!A1: The formula depends/);
    expect(A4).toBeUndefined();
  });
});

describe('a workbook', () => {
  it('resolves its names, tables and other sheets', async () => {
    const table = {
      name: 'Pins',
      area: { top: 0, left: 0, bottom: 3, right: 1 },
      hasHeader: true,
      hasTotals: true,
      columns: ['Size', 'Count'],
    };
    const results = await run(
      [
        sheet('Main', {
          A1: '=PITCH*2',
          A2: '=SUM(Pins[Count])',
          A3: "='Two words'!A2",
          A4: '=TWICE(4)',
          A5: '=HERE',
        }),
        sheet(
          'Two words',
          { A1: 'Size', B1: 'Count', A2: 3, B2: 4, A3: 5, B3: 6, A4: 'All', B4: 99 },
          { tables: [table] },
        ),
      ],
      [
        { name: 'PITCH', formula: "'Two words'!$A$3", hidden: false },
        { name: 'TWICE', formula: 'LAMBDA(x,MOLD.HALF(x)*4)', hidden: false },
        { name: 'HERE', formula: '42', sheet: 'Main', hidden: false },
      ],
    );
    expect(values(results)).toEqual({ A1: 10, A2: 10, A3: 3, A4: 8, A5: 42 });
  });

  it('tells what changed from what did not', async () => {
    const main = sheet('Main', { A1: 3, B1: '=A1/3', B2: '=A1*2' });
    const cached = {
      ...main,
      cells: main.cells.map((cell) => ({ ...cell, value: cell.formula === 'A1/3' ? 1 : cell.value })),
    };
    expect((await run([cached])).map(({ value, changed }) => [value, changed])).toEqual([
      [1, false],
      [6, true],
    ]);
  });

  it('follows inputs that are set one after another', () => {
    const calculator = new Book(
      contentOf(
        workbook([
          sheet('Main', { A1: 1, B1: '=MOLD.HALF(A1)', C1: '=B1+1', D1: '=SEQUENCE(A1)', E1: '=SUM(D1:D9)' }),
        ]),
      ),
      fakes,
    );
    const read = () => [1, 2, 4].map((column) => calculator.value(0, 0, column));
    calculator.calculate();
    expect(read()).toEqual([0.5, 1.5, 1]);
    for (const input of [2, 3, 1]) {
      calculator.set([{ sheet: 0, row: 0, column: 0, value: input }]);
      calculator.calculate();
      expect(read()).toEqual([input / 2, input / 2 + 1, (input * (input + 1)) / 2]);
    }
  });
});

describe('a calculator', () => {
  const make = (typed: Parameters<typeof sheet>[1]) =>
    new Book(contentOf(workbook([sheet('Main', typed)])), fakes);

  it('has nothing to do in a workbook without formulas, and says when it is done', () => {
    const calculator = make({ A1: 1 });
    calculator.calculate();
    calculator.calculate();
    expect(calculator.value(0, 0, 0)).toBe(1);
  });

  it('still knows a circle after an edit elsewhere, and sees it broken', () => {
    const calculator = make({ A1: '=A2', A2: '=A1+1', C1: 1, D1: '=C1*2' });
    const read = () => [calculator.value(0, 0, 0), calculator.value(0, 0, 3)];
    const circle = new CellError('#REF!', expect.stringMatching(/own result/) as string);
    calculator.calculate();
    expect(read()).toEqual([circle, 2]);
    calculator.set([{ sheet: 0, row: 0, column: 2, value: 5 }]);
    calculator.calculate();
    expect(read()).toEqual([circle, 10]);
    calculator.set([{ sheet: 0, row: 1, column: 0, value: 7 }]);
    calculator.calculate();
    expect(read()).toEqual([7, 10]);
  });

  it('forgets what a formula refused once it is content', () => {
    const calculator = make({ A1: 'no', B1: '=MOLD.HALF(A1)', C1: '=IF(A1=1,NA(),B1)' });
    const message = () => (calculator.value(0, 0, 1) as CellError).message;
    calculator.calculate();
    expect(message()).toBe('x: "no" is not a number.');
    calculator.set([{ sheet: 0, row: 0, column: 0, value: 4 }]);
    calculator.calculate();
    expect(calculator.value(0, 0, 1)).toBe(2);
    calculator.set([{ sheet: 0, row: 0, column: 0, value: 'nor' }]);
    calculator.calculate();
    expect(message()).toBe('x: "nor" is not a number.');
  });

  it('takes several edits at once, on several sheets', () => {
    const calculator = new Book(
      contentOf(workbook([sheet('One', { A1: 1, B1: '=A1+Two!A1' }), sheet('Two', { A1: 2 })])),
      fakes,
    );
    calculator.calculate();
    calculator.set([
      { sheet: 0, row: 0, column: 0, value: 10 },
      { sheet: 1, row: 0, column: 0, value: 20 },
    ]);
    calculator.calculate();
    expect(calculator.value(0, 0, 1)).toBe(30);
  });
});

describe('a formula in no cell', () => {
  it('gives rows of cells, with messages', () => {
    const calculator = new Book(contentOf(workbook([sheet('Main', {})])), fakes);
    expect(calculator.evaluate('MOLD.HALF({2,"x"})')).toEqual([
      [1, new CellError('#VALUE!', 'x: "x" is not a number.')],
    ]);
    expect(calculator.evaluate('MAP({1;2},LAMBDA(x,MOLD.HALF(x)))')).toEqual([[0.5], [1]]);
    expect(calculator.evaluate('A1:A2')).toEqual([[null], [null]]);
    expect(calculator.evaluate('1/3')).toEqual([[1 / 3]]);
    expect(calculator.evaluate('1+')[0]?.[0]).toBeInstanceOf(CellError);
    expect(calculator.evaluate('2*MOLD.HALF("x")')).toEqual([
      [new CellError('#VALUE!', 'x: "x" is not a number.')],
    ]);
  });
});

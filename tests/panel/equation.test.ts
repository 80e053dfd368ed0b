import { describe, expect, it } from 'vitest';
import { worksheetFunctions } from '../../src/call/functions';
import {
  EMPTY,
  equationCells,
  equationSize,
  judge,
  withEquation,
  type EquationDraft,
} from '../../src/panel/equation/draft';
import { keptEquations } from '../../src/panel/equation/kept';
import type { Host, Range } from '../../src/panel/host';
import { Book } from '../../src/sheet/book';

const stress = (parts: Partial<EquationDraft> = {}): EquationDraft => ({
  result: 'Stress',
  equation: 'F/(pi/4*d²)',
  rows: [
    { symbol: 'F', value: '500', unit: 'lbf' },
    { symbol: 'd', value: '0.25', unit: 'in' },
  ],
  unit: 'psi',
  ...parts,
});

/** 500 lbf over a round of 1/4 in. */
const PSI = 500 / ((Math.PI / 4) * 0.25 ** 2);

const said = (draft: EquationDraft) => judge(draft, worksheetFunctions);

describe('an equation that is typed', () => {
  it('gets a row for each of its symbols, once, in their order', () => {
    const { rows } = withEquation(EMPTY, 'F·a^2*(3*L-a)/(6*E*I) + sqrt(a)*pi');
    expect(rows.map(({ symbol }) => symbol)).toEqual(['F', 'a', 'L', 'E', 'I']);
  });

  it('keeps the rows while it cannot be read, and the values of symbols that stay', () => {
    const draft = stress();
    expect(withEquation(draft, 'F/(').rows).toEqual(draft.rows);
    expect(withEquation(draft, 'F/(b*d)').rows).toEqual([
      draft.rows[0],
      { symbol: 'b', value: '', unit: '' },
      draft.rows[1],
    ]);
  });

  it('gives its value once all is there', () => {
    const answer = said(stress());
    expect(answer.says === 'value' && answer.value).toBeCloseTo(PSI, 8);
  });

  it('has its units checked before there are values', () => {
    const [F, d] = stress().rows.map((row) => ({ ...row, value: '' }));
    const rows = [F ?? EMPTY.rows[0], d ?? EMPTY.rows[0]].filter((row) => row !== undefined);
    expect(said(stress({ rows }))).toEqual({ says: 'fits', missing: ['F', 'd'] });
    expect(said(stress({ rows, unit: 'lbf' }))).toMatchObject({
      says: 'problem',
      text: expect.stringContaining('pressure') as string,
    });
  });

  it('fits although the first numbers that stand in would divide by zero', () => {
    const draft = withEquation(EMPTY, '1/(a-b)');
    expect(said(draft)).toEqual({ says: 'fits', missing: ['a', 'b'] });
  });

  it.each([
    [{ equation: 'F d' }, 'multiplication'],
    [{ unit: 'quux' }, 'quux'],
    [{ unit: '' }, 'psi'],
    [{ rows: [{ symbol: 'F', value: '0,5', unit: 'lbf' }, ...stress().rows.slice(1)] }, 'comma'],
    [{ rows: [{ symbol: 'F', value: 'much', unit: 'lbf' }, ...stress().rows.slice(1)] }, 'much'],
    [{ equation: '2*3', rows: [], unit: '' }, 'no symbol'],
  ])('says what is wrong with %o', (parts, word) => {
    const answer = said(stress(parts));
    expect(answer.says === 'problem' && answer.text).toContain(word);
  });
});

describe('the cells of an equation', () => {
  /** The last cell of its block, calculated. */
  const calculated = (draft: EquationDraft, at = { row: 4, column: 2 }) => {
    const cells = equationCells(draft, at);
    expect({ rows: cells.length, columns: Math.max(...cells.map((line) => line.length)) }).toEqual(
      equationSize(draft),
    );
    const book = new Book(
      { sheets: [{ name: 'Own', cells: [], tables: [], rows: [] }], names: [], date1904: false },
      worksheetFunctions,
    );
    book.set(
      cells.flatMap((line, down) =>
        line.map((cell, across) => {
          const place = { sheet: 0, row: at.row + down, column: at.column + across };
          return typeof cell === 'string' && cell.startsWith('=')
            ? { ...place, value: null, formula: cell.slice(1) }
            : { ...place, value: cell };
        }),
      ),
    );
    book.calculate();
    return book.value(0, at.row + cells.length - 1, at.column + 1);
  };

  it('calculate the same in the sheet', () => {
    expect(calculated(stress())).toBeCloseTo(PSI, 8);
  });

  it('take values that bring their own units', () => {
    const rows = [
      { symbol: 'F', value: '500 lbf', unit: '' },
      { symbol: 'd', value: '6.35 mm', unit: '' },
    ];
    expect(calculated(stress({ rows }))).toBeCloseTo(PSI, 8);
  });

  it('never begin with a sign that a sheet takes for a formula', () => {
    const draft = stress({ equation: '= -F/d', unit: 'lbf/in' });
    expect(equationCells(draft, { row: 0, column: 0 })[0]?.[1]).toBe('(-F/d)');
    expect(calculated(draft)).toBeCloseTo(-2000, 8);
  });
});

describe('the equations of a workbook', () => {
  const draft = stress();
  const range = { row: 2, column: 1 };
  const size = equationSize(draft);
  const written = equationCells(draft, range);
  const book = new Book(
    {
      sheets: [
        {
          name: 'Own',
          tables: [],
          rows: [],
          cells: written.flatMap((line, down) =>
            line.map((content, across) => ({
              row: range.row + down,
              column: range.column + across,
              ...(typeof content === 'string' && content.startsWith('=')
                ? { value: null, formula: content.slice(1) }
                : { value: content }),
            })),
          ),
        },
      ],
      names: [],
      date1904: false,
    },
    worksheetFunctions,
  );
  book.calculate();
  const result = { row: range.row + size.rows - 1, column: range.column + 1 };
  const host = {
    formulasWhere: (isSuch: (formula: string) => boolean) =>
      written.flat().filter((one) => typeof one === 'string' && isSuch(one)).length === 1
        ? [{ sheet: 'Own', ...result, rows: 1, columns: 1 }]
        : [],
    read: ({ row, column, rows, columns }: Range) =>
      Promise.resolve(
        Array.from({ length: rows }, (_, down) =>
          Array.from({ length: columns }, (__, across) => {
            const place = { sheet: 0, row: row + down, column: column + across };
            const text = book.formulaAt(place)?.text;
            return {
              value: book.value(0, place.row, place.column),
              formula: text === undefined ? '' : `=${text}`,
            };
          }),
        ),
      ),
  } as unknown as Host;

  it('are found in the sheet itself, as they were typed, with what they give now', async () => {
    const [found, ...more] = await keptEquations(host, worksheetFunctions);
    expect(more).toEqual([]);
    expect(found?.draft).toEqual(draft);
    expect(found?.value).toBeCloseTo(PSI, 6);
    book.set([{ sheet: 0, row: range.row + 1, column: range.column + 1, value: 1000 }]);
    book.calculate();
    const [later] = await keptEquations(host, worksheetFunctions);
    expect(later?.draft.rows[0]?.value).toBe('1000');
    expect(later?.value).toBeCloseTo(2 * PSI, 6);
  });

  it('are none where the host cannot say', async () => {
    expect(await keptEquations({} as Host, worksheetFunctions)).toEqual([]);
  });
});

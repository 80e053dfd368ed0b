import { describe, expect, it } from 'vitest';
import { newWorkbook, readWorkbook, saveWorkbook } from '../../src/package';
import { editWorkbook, type WorkbookEdit } from '../../src/package/edits';
import { without } from '../../src/package/edits/areas';
import { knownFunctions } from '../../src/package/spelling';
import { CannotChange } from '../../src/package/structure';

const known = knownFunctions([]);
const area = (top: number, left: number, bottom = top, right = left) => ({ top, left, bottom, right });

const book = newWorkbook({
  sheets: [
    {
      name: 'Seat',
      cells: { A1: 5, A2: { formula: 'draft*2' }, B1: 'in', B2: 'mm', B3: 'in' },
      validations: [{ cells: 'B1:B9', accepts: 'B1>A1', refusal: { title: 'T', text: 'Text' } }],
    },
    { name: 'Lists', cells: { A1: 'in' } },
  ],
  names: { draft: 'Seat!$A$1' },
});

/** After the edits, saved and read again. */
const after = (...edits: WorkbookEdit[]) =>
  readWorkbook(
    saveWorkbook(
      edits.reduce((one, edit) => editWorkbook(one, edit, known), book),
      [],
    ),
    [],
  );

const formula = (edited: ReturnType<typeof after>) =>
  edited.sheets[0]?.cells.find(({ row, column }) => row === 1 && column === 0)?.formula;

describe('names', () => {
  it('are added, also for one sheet, and changed', () => {
    const edited = after(
      { do: 'setName', name: 'push', formula: 'Seat!$B$2' },
      { do: 'setName', name: 'own', formula: '2*3', sheet: 'Lists' },
      { do: 'setName', name: 'push', was: 'push', formula: 'Seat!$B$3' },
    );
    expect(edited.names).toEqual([
      { name: 'draft', formula: 'Seat!$A$1', hidden: false },
      { name: 'push', formula: 'Seat!$B$3', hidden: false },
      { name: 'own', formula: '2*3', hidden: false, sheet: 'Lists' },
    ]);
  });

  it('take the formulas that use them along', () => {
    const edited = after({ do: 'setName', name: 'angle', was: 'draft', formula: 'Seat!$A$1' });
    expect(edited.names.map(({ name }) => name)).toEqual(['angle']);
    expect(formula(edited)).toBe('angle*2');
  });

  it('go where nothing uses them, and else say what does', () => {
    const added = { do: 'setName', name: 'push', formula: '1' } as const;
    expect(after(added, { do: 'deleteName', name: 'PUSH' }).names).toHaveLength(1);
    expect(() => after({ do: 'deleteName', name: 'draft' })).toThrow(/"draft" is used by Seat/);
  });

  it.each(['A1', 'R1C1', '1x', 'two words', 'DRAFT', ''])('cannot be "%s"', (name) => {
    expect(() => after({ do: 'setName', name, formula: '1' })).toThrow(CannotChange);
  });
});

describe('rules for entries', () => {
  it('take the place of what lay on their cells, and leave it on the others', () => {
    const rule = {
      kind: 'list',
      operator: 'between',
      choices: ['in', 'mm'],
      formulas: [],
      allowBlank: true,
      refusal: { style: 'warning', title: '', text: 'Only in & mm' },
    } as const;
    const { validations } =
      after({ do: 'setEntryRule', sheet: 'Seat', area: area(0, 1, 1), rule }).sheets[0] ?? {};
    expect(validations).toMatchObject([
      // Counted from the cell that is its first now.
      { areas: [area(2, 1, 8)], formulas: ['B3>A3'] },
      {
        areas: [area(0, 1, 1)],
        choices: ['in', 'mm'],
        refusal: { style: 'warning', text: 'Only in & mm' },
      },
    ]);
  });

  it('are taken away, the last with its list', () => {
    const edited = after({ do: 'setEntryRule', sheet: 'Seat', area: area(0, 1, 9), rule: null });
    expect(edited.sheets[0]?.validations).toEqual([]);
    const xml = new TextDecoder().decode(edited.parts.get('xl/worksheets/sheet1.xml'));
    expect(xml).not.toContain('dataValidation');
  });

  it('that the format does not bear are refused', () => {
    const rule = { kind: 'list', operator: 'between', formulas: [], allowBlank: true } as const;
    const set = (choices: string[]) =>
      after({ do: 'setEntryRule', sheet: 'Seat', area: area(0, 1), rule: { ...rule, choices } });
    expect(() => set(['a,b'])).toThrow(CannotChange);
    expect(() => set(['x'.repeat(256)])).toThrow(CannotChange);
    expect(() => set([])).toThrow(CannotChange);
  });
});

it('colors by value are added behind each other and taken away again', () => {
  const rule = (text: string, fill: string) =>
    ({
      do: 'addColorRule',
      sheet: 'Seat',
      rule: { areas: [area(0, 1, 2)], kind: 'expression', formulas: [text], style: { fill } },
    }) as const;
  const both = [rule('B1="in"', '#DDF0DA'), rule('B1="mm"', '#FBDCD0')];
  expect(after(...both).sheets[0]?.conditionalFormats).toMatchObject([
    { formulas: ['B1="in"'], priority: 1, style: { fill: '#DDF0DA' } },
    { formulas: ['B1="mm"'], priority: 2, style: { fill: '#FBDCD0' } },
  ]);
  const left = after(...both, { do: 'deleteColorRule', sheet: 'Seat', index: 0 });
  expect(left.sheets[0]?.conditionalFormats.map(({ formulas }) => formulas[0])).toEqual(['B1="mm"']);
});

it('a filter hides rows and lets them be seen again', () => {
  const filter = {
    do: 'setFilter',
    sheet: 'Seat',
    area: area(0, 0, 2, 1),
    column: 1,
    shows: ['in'],
    hidden: [1],
  } as const;
  const hidden = (edited: ReturnType<typeof after>) =>
    edited.sheets[0]?.rows.filter((one) => one.hidden).map(({ row }) => row);
  const filtered = after(filter);
  expect(filtered.sheets[0]?.filters).toEqual([area(0, 0, 2, 1)]);
  expect(hidden(filtered)).toEqual([1]);
  expect(filtered.names).toHaveLength(1);
  const seen = after(filter, { do: 'clearFilter', sheet: 'Seat' });
  expect(seen.sheets[0]?.filters).toEqual([]);
  expect(hidden(seen)).toEqual([]);
});

it('a filter of several columns keeps what each asks for, and one that asks for nothing has its arrows', () => {
  const filter = { do: 'setFilter', sheet: 'Seat', area: area(0, 0, 2, 1), hidden: [1] } as const;
  const of = (...edits: Parameters<typeof after>) => after(...edits).sheets[0]?.filter?.columns;
  const first = { ...filter, column: 1, shows: ['in', ''] };
  const second = { ...filter, column: 0, shows: ['a & b'] };
  expect(of(first, second)).toEqual([
    { column: 0, shows: ['a & b'] },
    { column: 1, shows: ['in', ''] },
  ]);
  expect(of(first, second, { ...first, shows: null })).toEqual([{ column: 0, shows: ['a & b'] }]);
  expect(of({ ...first, shows: null })).toEqual([]);
  expect(of(first, { ...second, area: area(0, 0, 1, 1) })).toEqual([{ column: 0, shows: ['a & b'] }]);
});

it('a note is written and taken away', () => {
  const note = { do: 'setNote', sheet: 'Seat', row: 0, column: 0 } as const;
  expect(after({ ...note, text: 'Per side' }).sheets[0]?.notes).toEqual([
    { row: 0, column: 0, text: 'Per side' },
  ]);
  expect(after({ ...note, text: 'Per side' }, { ...note, text: null }).sheets[0]?.notes).toEqual([]);
});

it('an area without the cells in its middle is what lies around them', () => {
  expect(without([area(0, 0, 2, 2)], area(1, 1))).toEqual([
    area(0, 0, 0, 2),
    area(1, 0),
    area(1, 2),
    area(2, 0, 2, 2),
  ]);
  expect(without([area(0, 0)], area(5, 5))).toEqual([area(0, 0)]);
});

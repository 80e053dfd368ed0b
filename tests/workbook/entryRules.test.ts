import { describe, expect, it } from 'vitest';
import { CellError, type CellValue } from '../../src/cells/value';
import type { Validation } from '../../src/package/model';
import { inWords, refusalOfEntry } from '../../src/workbook/entryRules';
import { nextOf, Troubles } from '../../src/page/troubles';

const rule = (over: Partial<Validation>): Validation => ({
  areas: [{ top: 1, left: 1, bottom: 9, right: 1 }],
  kind: 'decimal',
  operator: 'between',
  formulas: ['1', '10'],
  allowBlank: true,
  showsArrow: false,
  refusal: { style: 'stop', title: 'Draft', text: 'From 1 to 10 degrees.' },
  ...over,
});

/** Stands for the workbook: numbers are themselves, `A1:A3` is a list, `B3>0` is true. */
const evaluate = (formula: string) => {
  if (formula === '$A$1:$A$3') return [['PP'], ['ABS'], [null]];
  if (formula === 'B3>0') return [[true]];
  if (formula === 'B2>0') return [[false]];
  return [[Number.isNaN(Number(formula)) ? new CellError('#NAME?') : Number(formula)]];
};

const said = (one: Validation, value: CellValue, row = 1) =>
  refusalOfEntry([one], { row, column: 1 }, value, evaluate);

describe('an entry outside its rule', () => {
  it('is answered with the style and the words of the rule', () => {
    expect(said(rule({}), 11)).toEqual({ style: 'stop', title: 'Draft', text: 'From 1 to 10 degrees.' });
    const soft = rule({ refusal: { style: 'warning', title: '', text: '' } });
    expect(said(soft, 0.5)).toEqual({
      style: 'warning',
      title: 'This entry does not fit',
      text: 'A number from 1 to 10.',
    });
  });

  it('is told from a good one at every kind of bound', () => {
    const bad = (over: Partial<Validation>, value: CellValue) => said(rule(over), value) !== undefined;
    expect([1, 5.5, 10].map((value) => bad({}, value))).toEqual([false, false, false]);
    expect(['5', true, 10.01].map((value) => bad({}, value))).toEqual([true, true, true]);
    expect(bad({ kind: 'whole' }, 5.5)).toBe(true);
    const than = (operator: string) => [0, 1, 2].map((value) => bad({ operator, formulas: ['1'] }, value));
    expect(than('equal')).toEqual([true, false, true]);
    expect(than('notEqual')).toEqual([false, true, false]);
    expect(than('greaterThan')).toEqual([true, true, false]);
    expect(than('greaterThanOrEqual')).toEqual([true, false, false]);
    expect(than('lessThan')).toEqual([false, true, true]);
    expect(than('lessThanOrEqual')).toEqual([false, false, true]);
    expect([0, 5, 11].map((value) => bad({ operator: 'notBetween' }, value))).toEqual([false, true, false]);
    expect(bad({ kind: 'textLength', operator: 'lessThan', formulas: ['4'] }, 'long')).toBe(true);
  });

  it('is looked up in lists of words and of cells', () => {
    const words = rule({ kind: 'list', choices: ['in', 'mm'], formulas: ['"in,mm"'] });
    expect(said(words, 'mm')).toBeUndefined();
    expect(said(words, 'MM')).toBeDefined();
    const cells = rule({ kind: 'list', formulas: ['$A$1:$A$3'] });
    expect(said(cells, 'abs')).toBeUndefined();
    expect(said(cells, 'PE')).toBeDefined();
  });

  it('counts relative references from the first cell, and refuses nothing by what it cannot work out', () => {
    const custom = rule({ kind: 'custom', formulas: ['B2>0'] });
    expect(said(custom, 3)).toBeDefined();
    expect(said(custom, 3, 2)).toBeUndefined();
    expect(said(rule({ kind: 'custom', formulas: ['nothing'] }), 3)).toBeUndefined();
    expect(said(rule({ formulas: ['x', 'x'] }), 3)).toBeUndefined();
  });

  it('is let through where blank is good, where no rule lies, and where nobody is to be told', () => {
    expect(said(rule({}), null)).toBeUndefined();
    expect(said(rule({ allowBlank: false }), null)).toBeDefined();
    expect(said(rule({}), 99, 30)).toBeUndefined();
    const silent: Partial<Validation> = rule({});
    delete (silent as { refusal?: unknown }).refusal;
    expect(said(silent as Validation, 99)).toBeUndefined();
  });
});

it('a rule is said in words', () => {
  expect(inWords(rule({ kind: 'list', choices: ['in', 'mm'] }))).toBe('One of: in, mm');
  expect(inWords(rule({ kind: 'whole', operator: 'greaterThanOrEqual', formulas: ['2'] }))).toBe(
    'A whole number at least 2',
  );
});

describe('cells in trouble', () => {
  const troubles = new Troubles();
  const at = (row: number, column: number) => ({ sheet: 0, row, column });
  const note = (row: number, ...values: CellValue[]) => {
    troubles.note(at(row, 0), { top: row, left: 0, bottom: row, right: values.length - 1 }, (_, column) => {
      return values[column] ?? null;
    });
  };

  it('are formulas in error and verdicts that do not hold, also where a formula fills several cells', () => {
    note(4, '✗ does not hold', '✓ holds', new CellError('#N/A'));
    note(2, new CellError('#NUM!', 'too small'));
    note(3, 'no ✗ here');
    expect(troubles.bySheet().get(0)).toEqual([at(2, 0), at(4, 0), at(4, 2)]);
  });

  it('are gone once they hold or their formula is', () => {
    note(2, 1);
    troubles.forget(at(4, 0));
    expect(troubles.bySheet().size).toBe(0);
  });

  it('are gone through one after the other, and round', () => {
    const cells = [at(2, 0), at(4, 0), at(4, 2)];
    expect(nextOf(cells, undefined)).toEqual(at(2, 0));
    expect(nextOf(cells, at(4, 0))).toEqual(at(4, 2));
    expect(nextOf(cells, at(4, 2))).toEqual(at(2, 0));
  });
});

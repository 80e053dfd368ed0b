import { describe, expect, it } from 'vitest';
import { conditionOf, gridOverlay, ruleResources } from '../../src/page/rules';
import type { ConditionalFormat, Validation } from '../../src/package/model';
import { newWorkbook } from '../../src/package';

const C4 = { top: 3, left: 2, bottom: 8, right: 2 };

function loaded(change: { validations: Validation[] }) {
  const plain = newWorkbook();
  const workbook = { ...plain, sheets: plain.sheets.map((sheet) => ({ ...sheet, ...change })) };
  return ruleResources(workbook).map(
    ({ data }) => (JSON.parse(data) as Record<string, Record<string, unknown>[]>)['sheet-1'] ?? [],
  ) as [Record<string, unknown>[]];
}

const plainEntry: Validation = {
  areas: [C4],
  kind: 'list',
  operator: 'between',
  formulas: ['"in,mm"'],
  allowBlank: true,
  showsArrow: true,
};
const entry: Validation = { ...plainEntry, choices: ['in', 'mm'] };
const entryRule = (change: Partial<Validation>) => loaded({ validations: [{ ...entry, ...change }] })[0][0];

const look: ConditionalFormat = {
  areas: [C4],
  kind: 'expression',
  formulas: ['C4>Insert!$D$49'],
  priority: 1,
  stopIfTrue: false,
  style: { font: { bold: true, color: '#8A2B06' }, fill: '#FBDFCF', borders: {} },
};
describe('rules for entries', () => {
  it('offer the words of a list, without the operator that files give every rule', () => {
    const rule = entryRule({});
    expect(rule).toMatchObject({
      type: 'list',
      formula1: 'in,mm',
      ranges: [{ startRow: 3, startColumn: 2, endRow: 8, endColumn: 2 }],
      showDropDown: true,
    });
    expect(rule).not.toHaveProperty('operator');
  });

  it('take the choices from cells where the rule names cells', () => {
    const [[rule]] = loaded({ validations: [{ ...plainEntry, formulas: ['Lists!$A$2:$A$9'] }] });
    expect(rule).toMatchObject({ formula1: '=Lists!$A$2:$A$9' });
  });

  it('tell limits that are numbers from limits that are formulas', () => {
    const [[rule]] = loaded({ validations: [{ ...plainEntry, kind: 'decimal', formulas: ['0', 'B2'] }] });
    expect(rule).toMatchObject({ type: 'decimal', operator: 'between', formula1: '0', formula2: '=B2' });
  });

  it('refuse, warn or stay silent as their author said', () => {
    expect(entryRule({})).not.toHaveProperty('showErrorMessage');
    expect(entryRule({ refusal: { style: 'stop', title: 'Units', text: 'Choose in or mm.' } })).toMatchObject(
      {
        showErrorMessage: true,
        errorStyle: 1,
        error: 'Choose in or mm.',
      },
    );
  });
});

describe('rules for looks', () => {
  it('keep their look', () => {
    expect(conditionOf(look)).toBe('C4>Insert!$D$49');
    expect(gridOverlay(look.style)).toEqual({ bl: 1, cl: { rgb: '#8A2B06' }, bg: { rgb: '#FBDFCF' } });
  });

  it('compare the first cell where they compare cells', () => {
    const condition = (operator: string, ...formulas: string[]) =>
      conditionOf({ ...look, kind: 'cellIs', operator, formulas });
    expect(condition('greaterThan', '$B$1')).toBe('C4>($B$1)');
    expect(condition('between', '1', '2')).toBe('AND(C4>=(1),C4<=(2))');
    expect(condition('notBetween', '1', '2')).toBe('NOT(AND(C4>=(1),C4<=(2)))');
  });
});

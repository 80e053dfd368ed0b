import { beforeAll, describe, expect, it } from 'vitest';
import { worksheetFunctions } from '../../src/call/functions';
import { catalogue } from '../../src/catalogue';
import { parseEquation } from '../../src/core/expr/parse';
import { nativeNumber, toNative } from '../../src/core/expr/native';
import { calculateFormulas } from '../../src/workbook/calculateFormulas';
import { recalculate } from '../../src/workbook/recalculate';
import { newWorkbook, readWorkbook } from '../../src/package';
import { tokenize } from '../../src/cells/formulaTokens';
import { callsOurs } from '../../src/package/spelling';
import { parseCell } from '../../src/cells/address';
import { cellFinder } from '../../src/package/model';
import { agrees } from '../../src/workbook/agrees';
import { shareWorkbook, type ShareResult } from '../../src/share';
import { callsOfChecks, workbookOf } from '../share/generated';

const native = (text: string): string =>
  toNative(
    parseEquation(text, () => true),
    (symbol) => symbol,
  );

describe('an equation in the worksheet’s own functions', () => {
  it.each([
    ['-x^2', '(-(x^2))'],
    ['2^3^2', '(2^(3^2))'],
    ['a - b - c', '((a-b)-c)'],
    ['a/b/c', '((a/b)/c)'],
    ['ln(x) + exp(-x)', '(LN(x)+EXP((-x)))'],
    ['cbrt(x)', '(SIGN(x)*ABS(x)^(1/3))'],
    ['ceil(x/2)', '(-INT(-(x/2)))'],
    ['a > b and b > 0 ? max(a, b) : pi', 'IF(AND((a>b),(b>0)),MAX(a,b),PI())'],
  ])('%s is %s', (text, wanted) => {
    expect(native(text)).toBe(wanted);
  });

  it('writes numbers as every program reads them', () => {
    expect([1e-7, -2.5, 1e21, Math.PI].map(nativeNumber)).toEqual(['1E-7', '(-2.5)', '1E21', 'PI()']);
  });

  it('gives what the book means where worksheets bind signs and powers otherwise', async () => {
    const values = await calculateFormulas([native('-3^2'), native('2^3^2'), native('cbrt(-8)')], []);
    expect(values.flat(2)).toEqual([-9, 512, -2]);
  });
});

/** Functions of which a copy holds values, because no worksheet formula works them out: 20 at most, with the tools. */
const FREEZING = ['COOL.TIMEROUND', 'PIN.STEPBUCKLE', 'STACK.TRIALS'];

/** By function, for all its checks in both systems: the weakest form that any of them needed. */
const ORDER = ['native', 'looked up', 'frozen'] as const;

describe('the catalogue in native formulas', () => {
  const calls = callsOfChecks();
  let shared: ShareResult;
  beforeAll(async () => {
    shared = await shareWorkbook(newWorkbook(workbookOf(calls)), worksheetFunctions, { as: 'native' });
  }, 300_000);

  it('calls none of our functions', () => {
    const copy = readWorkbook(shared.bytes, []);
    expect(
      copy.sheets.flatMap(({ cells }) => cells).filter(({ formula }) => formula && callsOurs(formula)),
    ).toEqual([]);
  });

  it('gives at every check what the core gives, calculated by the engine without our functions', async () => {
    const copy = readWorkbook(shared.bytes, []);
    const found = await recalculate(copy, [], { anew: true });
    const wanted = await recalculate(newWorkbook(workbookOf(calls)), worksheetFunctions);
    const byPlace = new Map(
      found.filter(({ sheet }) => sheet === 'Calls').map((one) => [`${one.row} ${one.column}`, one.value]),
    );
    const still = cellFinder(copy.sheets[0] as (typeof copy.sheets)[number]);
    for (const { row, column, value, spill } of wanted) {
      (spill ?? [[value]]).forEach((line, down) => {
        line.forEach((one, right) => {
          const place = `${row + down} ${column + right}`;
          const now = byPlace.get(place) ?? still(row + down, column + right)?.value ?? null;
          expect(
            agrees(now, one),
            `${calls[row / 4]?.definition.name ?? ''}: ${String(now)} for ${String(one)}`,
          ).toBe(true);
        });
      });
    }
  }, 120_000);

  it('keeps to what old programs take: 8,192 characters, 64 levels, 255 letters of text, 30 arguments', () => {
    for (const { formula = '' } of readWorkbook(shared.bytes, []).sheets.flatMap(({ cells }) => cells)) {
      let deepest = 0;
      const commas: number[] = [];
      for (const { kind, text } of tokenize(formula)) {
        if (kind === 'open') deepest = Math.max(deepest, commas.push(0));
        else if (kind === 'close') expect(commas.pop() ?? 0).toBeLessThan(30);
        else if (text === ',') commas.push((commas.pop() ?? 0) + 1);
        else if (kind === 'string') expect(text.length).toBeLessThanOrEqual(257);
      }
      expect(formula.length).toBeLessThanOrEqual(8192);
      expect(deepest).toBeLessThanOrEqual(64);
    }
  });

  it('has the forms of the golden table, at least 85 % of them alive', async () => {
    const forms = new Map<string, (typeof ORDER)[number]>();
    for (const { cell, how } of shared.cells) {
      const name = calls[(parseCell(cell)?.row ?? 0) / 4]?.definition.name ?? '';
      const known = forms.get(name) ?? 'native';
      const form =
        ORDER[
          Math.max(
            ORDER.indexOf(known),
            ORDER.findIndex((one) => one === how),
          )
        ] ?? 'frozen';
      forms.set(name, form);
    }
    const count = (form: string): number => [...forms.values()].filter((one) => one === form).length;
    const table = [
      ...ORDER.map((form) => `${form}: ${count(form)} of ${catalogue.length}`),
      '',
      ...[...forms].map(([name, form]) => `${name} ${form}`).sort(),
      '',
    ].join('\n');
    await expect(table).toMatchFileSnapshot('../golden/nativeForms.txt');
    expect(forms.size).toBe(catalogue.length);
    expect([...forms].flatMap(([name, form]) => (form === 'frozen' ? [name] : [])).sort()).toEqual(FREEZING);
    // Those that convert units have native forms, which their own tests hold.
    const tools = worksheetFunctions.map(({ id }) => id).filter((id) => /^(?:TRY|SHOW)\./.test(id));
    const called = tools.map(
      (id, i) => [`A${i + 1}`, { formula: `MOLD.${id}(${id === 'SHOW.BASIS' ? '' : 1})` }] as const,
    );
    const copy = await shareWorkbook(
      newWorkbook({ sheets: [{ name: 'Tools', cells: Object.fromEntries(called) }] }),
      worksheetFunctions,
      { as: 'native' },
    );
    const freezing = copy.cells.flatMap(({ how }, i) => (how === 'frozen' ? (tools[i] ?? []) : []));
    // Those that judge follow, where it is written which function they ask about.
    expect(freezing).toEqual(tools.filter((id) => id !== 'SHOW.BASIS'));
    expect(freezing.length + FREEZING.length).toBeLessThanOrEqual(20);
    expect((count('native') + count('looked up')) / catalogue.length).toBeGreaterThanOrEqual(0.85);
  });
});

import { describe, expect, it } from 'vitest';
import { CellError, type Argument, type CellValue, type Matrix } from '../../src/cells/value';
import { findDefinition } from '../../src/call/findDefinition';
import { worksheetFunctions } from '../../src/call/functions';
import { catalogue } from '../../src/catalogue';
import { readerOf } from '../../src/call/readArgument';
import { callDefinition } from '../../src/call/worksheet';
import type { AnyInput } from '../../src/core/define';
import { callsOfChecks } from '../share/generated';

const call = (id: string, ...args: (CellValue | Matrix | undefined)[]): Matrix => {
  const found = worksheetFunctions.find((f) => f.id === id);
  if (!found) throw new Error(`no function ${id}`);
  return found.call(
    args.map((arg): Argument =>
      arg === undefined ? undefined : Array.isArray(arg) ? (arg as Matrix) : [[arg as CellValue]],
    ),
  );
};
const one = (id: string, ...args: (CellValue | Matrix | undefined)[]): CellValue =>
  call(id, ...args)[0]?.[0] ?? null;
const refusal = (id: string, ...args: (CellValue | Matrix | undefined)[]): CellError => {
  const cell = one(id, ...args);
  if (cell instanceof CellError) return cell;
  throw new Error(`${id} answered ${String(cell)}`);
};

describe('a function in a worksheet', () => {
  it('reads plain numbers in inches unless told otherwise', () => {
    expect(one('SEAT.HEIGHT', 0.01, 5)).toBe(one('SEAT.HEIGHT', 0.01, 5, 'in'));
    expect(one('SEAT.HEIGHT', '0.01 mm', 5, 'mm')).toBeCloseTo(Number(one('SEAT.HEIGHT', 0.01, 5, 'mm')), 14);
  });

  it('reads text with its own unit in either system', () => {
    expect(one('SPRING.PRELOAD', '25 lbf/in', '1 1/2 in', '1.25"', undefined, 'mm')).toBeCloseTo(
      6.25 * 4.4482216152605,
      10,
    );
    expect(one('SEAT.FREEDRAFT', '15 %')).toBe(one('SEAT.FREEDRAFT', 0.15));
    expect(one('SEAT.HEIGHT', '10 µm', '5°', 'mm')).toBeCloseTo(0.05715026, 8);
  });

  it('reads text that is only a number as a plain number', () => {
    expect(one('SEAT.FREEDRAFT', '0.15')).toBe(one('SEAT.FREEDRAFT', 0.15));
  });

  it('takes a default only for what was left out', () => {
    const withDefault = one('CLAMP.TONNAGE', 2, 1500);
    expect(one('CLAMP.TONNAGE', 2, 1500, 1.2)).toBe(withDefault);
    // Excel hands 0 for a blank cell, and a margin of zero is refused.
    expect(refusal('CLAMP.TONNAGE', 2, 1500, 0).message).toContain('margin');
  });

  it('lets an argument that was left out follow the one it is said to follow', () => {
    expect(one('SEAT.RELEASE', 500, 6, 0.18)).toBe(one('SEAT.RELEASE', 500, 6, 0.18, 0.18));
  });

  it('does not mind case, spaces and hyphens in words and names', () => {
    expect(one('SEAT.FORCE', 500, 6, 0.18, ' MM ')).toBe(one('SEAT.FORCE', 500, 6, 0.18, 'mm'));
    const sink = (metal: string): CellValue => one('SEAT.SINK', 600, 5, 0.15, 0.4, 0.5, 1, 'P20', metal);
    expect(sink('7075 t6')).toBe(sink('7075-T6'));
  });

  it('takes a metal’s modulus in place of its name', () => {
    const byNumber = one('SEAT.SINK', 3000, 5, 0.15, 10, 12, 25, 205000, 71700, undefined, undefined, 'mm');
    expect(
      one('SEAT.SINK', 3000, 5, 0.15, 10, 12, 25, '205 GPa', '71.7 GPa', undefined, undefined, 'mm'),
    ).toBeCloseTo(Number(byNumber), 12);
  });
});

describe('a blank cell', () => {
  it('of an argument that may be left out counts as left out', () => {
    expect(one('CLAMP.TONNAGE', 2, 1500, null)).toBe(one('CLAMP.TONNAGE', 2, 1500));
    expect(one('SEAT.RELEASE', 500, 6, 0.18, null)).toBe(one('SEAT.RELEASE', 500, 6, 0.18));
    expect(one('TAP.DRILL', 'M6', null, null, null, 'mm')).toBe(one('TAP.DRILL', 'M6', 'mm'));
    expect(one('STACK.RSS', [[3], [4]], [[null], [null]], 'mm')).toBe(5);
    expect(one('TRY.SPREAD', 'FILL.GATE', [['wall', 2, 0.3, 'uniform']], null, null, 'mm')).toBe(
      one('TRY.SPREAD', 'FILL.GATE', [['wall', 2, 0.3, 'uniform']], 'mm'),
    );
  });

  it('beside cells that are filled counts as left out in its own place', () => {
    expect(call('CLAMP.TONNAGE', 2, 1500, [[1.5], [null]])).toEqual([
      [one('CLAMP.TONNAGE', 2, 1500, 1.5)],
      [one('CLAMP.TONNAGE', 2, 1500)],
    ]);
  });

  it('of an argument that is needed is refused as missing', () => {
    expect(refusal('SEAT.FORCE', 500, null, 0.15).message).toBe('draft is missing: its cell is blank.');
    expect(refusal('THREAD.VALUE', null, 'major').message).toMatch(/^thread is missing/);
    expect(refusal('STACK.RSS', [[null], [null]]).message).toMatch(/^tolerances/);
    expect(call('UNIT.CONVERT', [[1], [null]], 'in', 'mm')[1]?.[0]).toMatchObject({
      message: 'value is missing: its cell is blank.',
    });
    expect(refusal('SHOW.WORK', 'SEAT.FORCE', 500, null, 0.15).message).toMatch(/^draft is missing/);
  });

  it('does not settle the units: inches would be a guess', () => {
    expect(refusal('CLAMP.FORCE', 900, 25, 1.2, null).message).toBe('units is blank; it takes "in" or "mm".');
    expect(
      refusal('TRY.TABLE', 'SEAT.FORCE', [['push', 1]], 'draft', [[5]], undefined, undefined, null),
    ).toMatchObject({
      message: 'units is blank; it takes "in" or "mm".',
    });
  });
});

describe('a date in disguise', () => {
  it.each([
    ['THREAD.VALUE', 45589, 'major', '10-24'],
    ['THREAD.VALUE', 11963, 'major', '10-32'],
    ['TAP.DRILL', 12086, undefined, '2-56'],
    ['DRILL.SIZE', 45295, undefined, '1/4'],
    ['TAP.PERCENT', '1/4-20', 45424, '7/32'],
  ] as const)('is refused by %s with what was typed', (id, first, second, typed) => {
    const { code, message } = refusal(id, first, second);
    expect(code).toBe('#VALUE!');
    expect(message).toContain('a date; was ');
    if (id !== 'TAP.DRILL' && typed !== '7/32') expect(message).toContain(`Type '${typed}`);
  });

  it('is none where a number is meant', () => {
    expect(one('SEAT.SINK', 600, 5, 0.15, 10, 12, 25, 45000, 'P20', 'mm')).toBeTypeOf('number');
  });
});

describe('a percentage', () => {
  const drill = (percent: CellValue): CellValue => one('TAP.DRILLNAME', '1/4-20', percent);
  it('is one whether its cell holds percent or a fraction', () => {
    for (const percent of [30, 65, 75, 100])
      expect([drill(percent / 100), drill(`${percent} %`), drill(String(percent))]).toEqual([
        drill(percent),
        drill(percent),
        drill(percent),
      ]);
    expect(drill('20 %')).not.toBeInstanceOf(CellError);
  });

  it.each([20, 1.5, 0.2, 29.9, 110])('%d is refused with both readings', (percent) => {
    const { message } = refusal('TAP.DRILL', 'M6', percent);
    expect(message).toMatch(/^percent is /);
    expect(message).toContain(`${percent} % as a percentage and`);
    expect(message).toContain(`${Number((percent * 100).toPrecision(12))} % as a fraction`);
  });
});

describe('a fraction', () => {
  const fractions = catalogue.flatMap((definition) =>
    (definition.inputs as readonly AnyInput[])
      .filter(({ name }) => ['fraction', 'efficiency', 'usable', 'scrap', 'reserve'].includes(name))
      .map((input) => [definition.name, input] as const),
  );
  it.each(fractions)('of %s may be text in percent and is none above 1', (_, input) => {
    expect(fractions.length).toBeGreaterThan(5);
    const read = readerOf(input);
    expect(read('45 %', 'in')).toBeCloseTo(0.45, 12);
    expect(() => read(1.01, 'in')).toThrow(/must be/);
    expect(() => read('101 %', 'in')).toThrow(/must be/);
  });
});

describe('a metal given as a number', () => {
  it('is a modulus or an expansion that metals have', () => {
    const ring = (metal: CellValue): CellValue => one('PLATE.RING', 15, 40, 25, metal, 'mm');
    for (const metal of [500, 205000, 700000, '205 GPa', '205000']) expect(ring(metal)).toBeTypeOf('number');
    const refused = refusal('PLATE.RING', 15, 40, 25, 800000, 'mm').message;
    expect(refused).toMatch(/^metal is 800000 MPa; .*at least 500 MPa and at most 700000 MPa/);
    expect(refusal('PLATE.RING', 15, 40, 25, 205, 'mm').message).toMatch(/^metal is 205 MPa/);
    expect(one('HEAT.GROWTH', 100, 1.28e-5, 20, 'mm')).toBeCloseTo(0.0256, 12);
    expect(one('HEAT.GROWTH', 100, '12.8 µm/(m·K)', 20, 'mm')).toBeCloseTo(0.0256, 12);
    expect(one('HEAT.GROWTH', 100, '1.28e-5', 20, 'mm')).toBeCloseTo(0.0256, 12);
    expect(refusal('HEAT.GROWTH', 100, 12.8, 20, 'mm').message).toMatch(/^metal is 12.8 1\/°C/);
  });

  it('is not looked for where figures are a name', () => {
    const ring = (metal: CellValue): CellValue => one('PLATE.RING', 15, 40, 25, metal, 'mm');
    expect(ring('1018')).toBe(ring('AISI 1018'));
    expect(refusal('PLATE.RING', 15, 40, 25, '61', 'mm').code).toBe('#N/A');
  });
});

describe('words', () => {
  it('are read in American and in British spelling', () => {
    const time = (at: string): CellValue => one('COOL.TIME', 3, 0.09, 240, 60, 95, at, 'mm');
    for (const word of ['center', 'centre', 'Centre', ' CENTER ']) expect(time(word)).toBe(time('center'));
    const value = (property: string): CellValue => one('RESIN.VALUE', 'PP', property);
    expect(value('mould temperature')).toBe(value('mold temperature'));
    expect(one('UNIT.CONVERT', 1, 'litre', 'mL')).toBeCloseTo(1000, 9);
    expect(one('UNIT.CONVERT', 1, 'millimetres', 'mm')).toBe(1);
  });
});

describe('units', () => {
  it('may come right after the last argument given', () => {
    expect(one('TAP.DRILL', 'M6', 'mm')).toBe(one('TAP.DRILL', 'M6', undefined, undefined, undefined, 'mm'));
    expect(one('SPRING.PRELOAD', 12, 1.5, 1, 'mm')).toBe(6);
    expect(one('SPRING.PRELOAD', 12, 1.5, 1, [[' MM ']])).toBe(6);
    expect(one('STACK.RSS', [[3], [4]], 'mm')).toBe(5);
    expect(
      one(
        'STACK.RSS',
        ['3 in', '4 in'].map((part) => [part]),
        'mm',
      ),
    ).toBe(127);
  });

  it('are not looked for before an argument that is given', () => {
    expect(refusal('TAP.DRILL', 'M6', 'mm', 75).message).toMatch(/^percent is "mm"/);
    expect(refusal('SPRING.PRELOAD', 12, 'mm', 1).message).toMatch(/^freeLength is "mm"/);
  });

  it('that come early leave out what would stand in their place', () => {
    expect(refusal('SEAT.FORCE', 2000, 5, 'mm').message).toBe('friction is missing.');
    expect(refusal('SEAT.FORCE', 'mm').message).toBe('push is missing.');
  });

  it('as a range stand only in their own place', () => {
    expect(refusal('SPRING.PRELOAD', 12, 1.5, 1, [['in'], ['mm']]).message).toMatch(/^shim is "in"/);
    expect(call('SPRING.PRELOAD', 12, 1.5, 1, undefined, [['mm'], ['mm']])).toEqual([[6], [6]]);
  });

  it('are "in" or "mm" and nothing else', () => {
    for (const word of ['inch', 'm-m', 'cm', ''])
      expect(refusal('CLAMP.FORCE', 900, 25, undefined, word).message).toMatch(/^units is/);
    expect(refusal('CLAMP.FORCE', 900, 25, 'inch').message).toMatch(/^margin is "inch"/);
  });

  it('may come early in the functions about functions, and in the arguments that these pass on', () => {
    const inputs = [
      ['push', 1000],
      ['draft', 5],
      ['friction', 0.15],
    ];
    const drafts = [[3], [5]];
    expect(call('TRY.TABLE', 'SEAT.FORCE', inputs, 'draft', drafts, 'mm')).toEqual(
      call('TRY.TABLE', 'SEAT.FORCE', inputs, 'draft', drafts, undefined, undefined, 'mm'),
    );
    expect(call('TRY.SPREAD', 'FILL.GATE', [['wall', 2, 0.3, 'uniform']], 'mm')).toEqual(
      call('TRY.SPREAD', 'FILL.GATE', [['wall', 2, 0.3, 'uniform']], undefined, undefined, 'mm'),
    );
    for (const tool of ['SHOW.WORK', 'SHOW.CHECK', 'SHOW.CAUTION']) {
      expect(call(tool, 'SPRING.PRELOAD', 12, 1.5, 1, 'mm')).toEqual(
        call(tool, 'SPRING.PRELOAD', 12, 1.5, 1, undefined, 'mm'),
      );
    }
    expect(one('UNIT.CONVERT', 1, 'in', 'mm')).toBe(25.4);
  });

  it('mean the same in either place, whatever is left out at the end', () => {
    const calls = callsOfChecks().filter(({ cells }) => cells.at(-1)?.length === 1);
    expect(calls.length).toBeGreaterThan(200);
    for (const { definition, cells } of calls) {
      const args = cells.map((column) => column?.map((cell) => [cell]));
      const early = args.filter((arg, i) => arg !== undefined || args.slice(i + 1, -1).some(Boolean));
      const fn = worksheetFunctions.find(({ id }) => id === definition.name);
      expect(fn?.call(early), definition.name).toEqual(fn?.call(args));
    }
  });
});

describe('ranges', () => {
  it('answer in the shape in which they broadcast', () => {
    const table = call('SEAT.FORCE', [[1000, 2000]], [[3], [5], [10]], 0.15, 'mm');
    expect(table.map((row) => row.length)).toEqual([2, 2, 2]);
    expect(table[2]?.[1]).toBe(one('SEAT.FORCE', 2000, 10, 0.15, 'mm'));
  });

  it('that do not fit are refused by naming the second of the two', () => {
    const { code, message } = refusal('SEAT.CLEAR', [[1], [2], [3]], [[4], [5]]);
    expect(code).toBe('#VALUE!');
    expect(message).toBe('draft is 2 × 1 cells (rows × columns), which does not fit lift with 3 × 1.');
  });

  it('that do not fit name the argument they clash with, not the shape of all before them', () => {
    const { message } = refusal('SEAT.FORCE', [[1], [2], [3]], [[5, 6, 7, 8]], [[0.1], [0.2]]);
    expect(message).toBe('friction is 2 × 1 cells (rows × columns), which does not fit push with 3 × 1.');
  });

  it('may hold units, one for every cell', () => {
    expect(call('SEAT.FREEDRAFT', 0.15, [['in', 'mm', 'm']])[0]?.[2]).toBeInstanceOf(CellError);
  });

  it('keep a refusal in its own cell', () => {
    const column = call('SEAT.FORCE', 1000, [[5], [0], [10]], 0.15).map(([cell]) => cell);
    expect(column[1]).toBeInstanceOf(CellError);
    expect(typeof column[0]).toBe('number');
    expect(typeof column[2]).toBe('number');
  });

  it('let errors of other cells through', () => {
    const error = new CellError('#DIV/0!');
    expect(call('SEAT.FORCE', [[1000], [error]], 5, 0.15)[1]?.[0]).toBe(error);
  });

  it('read as one list may end in blanks but not hold one', () => {
    expect(one('STACK.WORST', [[0.1], [0.2], [null], [null]], undefined, 'mm')).toBeCloseTo(0.3, 12);
    expect(refusal('STACK.WORST', [[0.1], [null], [0.2]], undefined, 'mm').message).toContain('blank cell');
    expect(refusal('STACK.WORST', [[null], [null]]).message).toBe('tolerances holds no numbers.');
  });

  const block = (n: number): [Matrix, Matrix] => [
    Array.from({ length: n }, () => [1]),
    [Array.from({ length: n }, () => 5)],
  ];

  it('of more cells than a column has rows are refused', () => {
    expect(refusal('SEAT.CLEAR', ...block(1025)).message).toContain('1025 × 1025 cells; at most 1048576');
  });

  it('of more cells than the host passes are refused in its words, and answered elsewhere', () => {
    const seatClear = findDefinition('SEAT.CLEAR');
    const [[refused] = []] = callDefinition(seatClear, block(300), 50_000);
    expect(refused).toBeInstanceOf(CellError);
    expect((refused as CellError).message).toContain('300 × 300 cells; at most 50000');
    const answered = callDefinition(seatClear, block(300));
    expect(answered.length * (answered[0]?.length ?? 0)).toBe(90_000);
    expect(answered[299]?.[299]).toBe(answered[0]?.[0]);
  });

  it('of units cell by cell are read in each cell’s own', () => {
    const units: Matrix = [['in'], ['mm'], ['in']];
    const [inch, metric, again] = call('SEAT.HEIGHT', '1 in', 5, units);
    expect(again).toEqual(inch);
    expect(Number(metric?.[0])).toBeCloseTo(Number(inch?.[0]) * 25.4, 9);
  });
});

describe('a refusal', () => {
  it.each([
    [['SEAT.FORCE', 400, 0, 0.15], 'draft is 0 deg; it must be above 0 deg and below 45 deg.'],
    [
      ['SEAT.FORCE', '5 MPa', 5, 0.15, 'mm'],
      'push is "5 MPa", a pressure; it takes a force, as a number in N or as text such as "1.5 N".',
    ],
    [
      ['SEAT.FORCE', '5 furlong', 5, 0.15],
      'push is "5 furlong", but furlong is no unit of force; use lbf, N, kN, kgf, ozf.',
    ],
    [
      ['SEAT.FORCE', '1\u2009000 N', 5, 0.15],
      'push is "1\u2009000 N", which has a blank in its number: thousands take no sign (1000).',
    ],
    [
      ['SEAT.FORCE', '5 deg', 5, 0.15],
      'push is "5 deg", an angle; it takes a force, as a number in lbf or as text such as "1.5 lbf".',
    ],
    [
      ['SEAT.FORCE', 'a lot', 5, 0.15],
      'push is "a lot"; it takes a force, as a number in lbf or as text such as "1.5 lbf".',
    ],
    [
      ['SEAT.FORCE', true, 5, 0.15],
      'push is TRUE; it takes a force, as a number in lbf or as text such as "1.5 lbf".',
    ],
    [['SEAT.FORCE', 400, 5], 'friction is missing.'],
    [['SEAT.FREEDRAFT', 0.1, 'in', 3], 'SEAT.FREEDRAFT takes at most 2 arguments; 3 were given.'],
    [['CLAMP.TONNAGE', 1000, 10, 1.2, 'metric'], 'units is "metric"; it takes "in" or "mm".'],
    [['FLUSH.STOCK', 0.01, 5, 0.02, 0.01, 0, 0.05, 'sum'], 'method is "sum"; it takes "worst" or "rss".'],
    [
      ['SEAT.SINK', 3000, 5, 0.15, 12, 12, 10, 'P20', '7075-T6', undefined, undefined, 'mm'],
      'blockRadius is 10 mm; it must be larger than seatRadius, 12 mm.',
    ],
  ] as const)('of %j says what to change', ([id, ...args], message) => {
    expect(refusal(id, ...args)).toEqual(new CellError('#VALUE!', message));
  });

  it('of a name that stands in no table is #N/A and names the nearest', () => {
    expect(refusal('TAP.DRILL', '1/4-21')).toMatchObject({ code: '#N/A' });
    expect(refusal('TAP.DRILL', '1/4-21').message).toContain('1/4-20');
  });

  it('of a designation with several meanings names them', () => {
    const { code, message } = refusal('TAP.DRILL', '1/4');
    expect(code).toBe('#VALUE!');
    expect(message).toMatch(/1\/4-20.*1\/4-28/);
  });

  it('never is NaN or Infinity, even at the end of the numbers', () => {
    expect(refusal('SEAT.HEIGHT', 1e308, 1e-10, 'in').code).toBe('#VALUE!');
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/catalogue';
import { CellError, type Argument, type CellValue, type Matrix } from '../../src/cells/value';
import { worksheetFunctions } from '../../src/call/functions';
import { inputsOf, type Check } from '../../src/core/define';
import { argumentsOf } from '../support/runCheck';

type Given = CellValue | Matrix | undefined;

const call = (id: string, ...args: Given[]): Matrix => {
  const found = worksheetFunctions.find((f) => f.id === id);
  if (!found) throw new Error(`no function ${id}`);
  return found.call(
    args.map((arg): Argument =>
      arg === undefined ? undefined : Array.isArray(arg) ? (arg as Matrix) : [[arg as CellValue]],
    ),
  );
};
const one = (id: string, ...args: Given[]): CellValue => call(id, ...args)[0]?.[0] ?? null;
const refusal = (id: string, ...args: Given[]): CellError => {
  const cell = one(id, ...args);
  if (cell instanceof CellError) return cell;
  throw new Error(`${id} answered ${String(cell)}`);
};

const SEAT: Matrix = [
  ['push', 1000],
  ['draft', 5],
  ['friction', 0.15],
];
const SPRING: Matrix = [
  ['rate', 5],
  ['freeLength', 40],
  ['pocketLength', 32],
  ['shim', 0],
];

describe('TRY.TABLE', () => {
  it('heads its rows and columns and holds what the function gives', () => {
    const table = call('TRY.TABLE', 'SEAT.FORCE', SEAT, 'draft', [[3], [5]], 'push', [[1000, 2000]], 'mm');
    expect(table[0]).toEqual(['draft \\ push', 1000, 2000]);
    expect(table[1]).toEqual([
      3,
      one('SEAT.FORCE', 1000, 3, 0.15, 'mm'),
      one('SEAT.FORCE', 2000, 3, 0.15, 'mm'),
    ]);
  });

  it('over one argument is headed by it and the function', () => {
    const [head, ...rows] = call(
      'TRY.TABLE',
      'mold.spring.preload',
      SPRING,
      'shim',
      [[0, 2]],
      undefined,
      undefined,
      'mm',
    );
    expect(head).toEqual(['shim', 'SPRING.PRELOAD']);
    expect(rows.map(([shim]) => shim)).toEqual([0, 2]);
    // By hand: 5 × (40 − 32) and 5 × (40 − 30).
    expect(rows[0]?.[1]).toBeCloseTo(40, 10);
    expect(rows[1]?.[1]).toBeCloseTo(50, 10);
  });

  it('keeps a refused value as an error in its place', () => {
    const table = call('TRY.TABLE', 'SEAT.FORCE', SEAT, 'draft', [[5], [0]]);
    expect(table[2]?.[1]).toBeInstanceOf(CellError);
    expect(typeof table[1]?.[1]).toBe('number');
  });

  it('takes names as well as numbers for its values', () => {
    const table = call(
      'TRY.TABLE',
      'HEAT.GROWTH',
      [
        ['length', 100],
        ['metal', 'P20'],
        ['rise', 30],
      ],
      'metal',
      [['P20'], ['6061-T6']],
      undefined,
      undefined,
      'mm',
    );
    expect(Number(table[2]?.[1]) / Number(table[1]?.[1])).toBeCloseTo(23.6 / 12.8, 12);
  });

  it.each([
    [['SEAT.FORCE', SEAT, 'drift', [[1]]], 'argA names "drift", but SEAT.FORCE takes push, draft, friction.'],
    [
      [
        'SEAT.FORCE',
        [
          ['push', 1],
          ['drift', 5],
        ],
        'draft',
        [[1]],
      ],
      'inputs names "drift", but SEAT.FORCE takes push, draft, friction.',
    ],
    [
      ['SEAT.FORCE', SEAT, 'draft', [[1]], 'draft', [[1]]],
      'argB is draft as well; it takes another argument.',
    ],
    [['SEAT.FORCE', SEAT, 'draft', [[null]]], 'valuesA holds no values.'],
    [['SEAT.FORCE', [['push', 1, 2]], 'draft', [[1]]], 'inputs has 3 columns; it takes 2.'],
    [
      [
        'SEAT.FORCE',
        [
          ['push', 1],
          ['push', 2],
        ],
        'draft',
        [[1]],
      ],
      'inputs names push more than once.',
    ],
    [['SEAT.FORCE', SEAT], 'argA is missing.'],
  ] as const)('of %j is refused', (args, message) => {
    expect(refusal('TRY.TABLE', ...(args as readonly Given[])).message).toBe(message);
  });

  it('of an unknown function names the nearest', () => {
    expect(refusal('TRY.TABLE', 'SEAT.FORZE', SEAT, 'draft', [[1]])).toMatchObject({ code: '#N/A' });
    expect(refusal('TRY.TABLE', 'SEAT.FORZE', SEAT, 'draft', [[1]]).message).toContain('SEAT.FORCE');
  });
});

describe('TRY.SOLVE', () => {
  it('finds the argument that a function was made with', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 40, noNaN: true }), (draft) => {
        const target = one('SEAT.CLEAR', 2, draft, 'mm');
        const found = Number(one('TRY.SOLVE', 'SEAT.CLEAR', [['lift', 2]], 'draft', target, 0.5, 44, 'mm'));
        expect(Math.abs(found / draft - 1)).toBeLessThan(1e-12);
      }),
    );
  });

  it('says what the ends give where the target is not between them', () => {
    expect(refusal('TRY.SOLVE', 'SPRING.PRELOAD', SPRING, 'shim', 600, 0, 10, 'mm').message).toBe(
      'target is 600 N, but SPRING.PRELOAD gives 40 N at low and 90 N at high.',
    );
  });

  it('takes its ends and its target with units of their own', () => {
    expect(one('TRY.SOLVE', 'SPRING.PRELOAD', SPRING, 'shim', '60 N', '0 in', '1 cm', 'mm')).toBeCloseTo(
      4,
      12,
    );
  });

  it('finds where a result is 0, though rounding misses it by a hair', () => {
    const screw: Matrix = [
      ['shoulderLength', 0.35],
      ['landThickness', 0.1],
    ];
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 0.2, noNaN: true }), (low) => {
        expect(one('TRY.SOLVE', 'SHOULDER.TRAVEL', screw, 'shims', 0, low, 0.33)).toBeCloseTo(0.25, 12);
      }),
    );
  });

  it('refuses a target that the result jumps over', () => {
    const drill: Matrix = [
      ['thread', '10-32'],
      ['series', 'inch'],
    ];
    expect(refusal('TRY.SOLVE', 'TAP.DRILL', drill, 'percent', 0.16, 50, 90).message).toContain('jumps over');
  });

  it('refuses what is not a quantity and ends that are the wrong way round', () => {
    expect(refusal('TRY.SOLVE', 'FLUSH.STOCK', SPRING, 'method', 1, 0, 1).message).toContain(
      'not a quantity',
    );
    expect(refusal('TRY.SOLVE', 'SPRING.PRELOAD', SPRING, 'shim', 60, 10, 0).message).toContain('above low');
  });
});

describe('TRY.SWING', () => {
  it('ranks by the swing, with the exact local change', () => {
    // Products change by one percent for one percent: the outside here is arithmetic.
    const table = call(
      'TRY.SWING',
      'CLAMP.FORCE',
      [
        ['projectedArea', 900, 800, 1000],
        ['cavityPressure', 25, 20, 30],
        ['margin', 1.2, 1.1, 1.3],
      ],
      'mm',
    );
    expect(table[0]).toEqual(['argument', 'at low', 'at high', 'swing', '% per %']);
    expect(table.slice(1).map(([name]) => name)).toEqual(['cavityPressure', 'projectedArea', 'margin']);
    for (const row of table.slice(1)) expect(row[4]).toBeCloseTo(1, 12);
    expect(table[1]?.[3]).toBeCloseTo(10800, 8);
  });

  it('of a name gives the results and says that it is no number', () => {
    const table = call(
      'TRY.SWING',
      'HEAT.GROWTH',
      [
        ['length', 100, 99, 101],
        ['metal', 'P20', 'P20', '6061-T6'],
        ['rise', 30, 30, 30],
      ],
      'mm',
    );
    expect(table.find(([name]) => name === 'metal')?.[4]).toBe('not a number');
  });

  it('of a temperature counts in degrees', () => {
    const table = call(
      'TRY.SWING',
      'COOL.MOLDTEMP',
      [
        ['shotMass', 10, 10, 10],
        ['heatContent', 480, 480, 480],
        ['cycle', 120, 120, 120],
        ['area', 60000, 60000, 60000],
        ['film', 12, 12, 12],
        ['airTemp', 20, 10, 30],
      ],
      'mm',
    );
    expect(table[1]?.[0]).toBe('airTemp');
    expect(table[1]?.[3]).toBeCloseTo(20, 9);
  });
});

describe('TRY.SPREAD', () => {
  const wall: Matrix = [['wall', 2, 0.3, 'uniform']];

  it('is the same for the same seed and another for another', () => {
    expect(call('TRY.SPREAD', 'FILL.GATE', wall, 5000, 7, 'mm')).toEqual(
      call('TRY.SPREAD', 'FILL.GATE', wall, 5000, 7, 'mm'),
    );
    expect(call('TRY.SPREAD', 'FILL.GATE', wall, 5000, 7, 'mm')).not.toEqual(
      call('TRY.SPREAD', 'FILL.GATE', wall, 5000, 8, 'mm'),
    );
  });

  it('agrees with the known spread of a proportion within five standard errors', () => {
    const [row = []] = call('TRY.SPREAD', 'FILL.GATE', wall, 20000, 7, 'mm');
    const sigma = (0.6 * 0.3) / Math.sqrt(3);
    expect(Math.abs(Number(row[0]) - 1.2)).toBeLessThan((5 * sigma) / Math.sqrt(20000));
    expect(Math.abs(Number(row[1]) / sigma - 1)).toBeLessThan(5 / Math.sqrt(2 * 20000));
    expect(Number(row[5])).toBeGreaterThanOrEqual(1.02);
    expect(Number(row[6])).toBeLessThanOrEqual(1.38);
  });

  it('refuses a spread that leaves what the function takes', () => {
    expect(
      refusal('TRY.SPREAD', 'SEAT.HEIGHT', [
        ['widthError', 1, 0.1, ''],
        ['draft', 1, 5, 'uniform'],
      ]).message,
    ).toContain('let draft spread to');
  });

  it('refuses an unknown shape, a tolerance on a name and too many trials', () => {
    expect(refusal('TRY.SPREAD', 'FILL.GATE', [['wall', 2, 0.3, 'bell']]).message).toContain(
      'normal, uniform',
    );
    expect(
      refusal('TRY.SPREAD', 'HEAT.GROWTH', [
        ['length', 1, 0, ''],
        ['metal', 'P20', 1, ''],
        ['rise', 1, 0, ''],
      ]).message,
    ).toContain('not a quantity');
    expect(refusal('TRY.SPREAD', 'FILL.GATE', wall, 1e9).message).toContain('trials');
  });
});

describe('SHOW', () => {
  it('knows the basis', () => {
    expect(String(one('SHOW.BASIS'))).toMatch(/^basis 1, \d+\.\d+\.\d+$/);
  });

  it.each(catalogue.map((definition) => [definition.name, definition] as const))(
    'tells all of %s',
    (name, definition) => {
      const checks = definition.checks as readonly Check[];
      const [check] = checks;
      if (!check) throw new Error('no check');
      const args = argumentsOf(definition, check, 'mm');
      const show = worksheetFunctions.find(({ id }) => id === 'SHOW.WORK');
      const work = show?.call([[[name]], ...args]) ?? [];
      const found = worksheetFunctions.find(({ id }) => id === name);
      const [answers = []] = found?.call(args) ?? [];
      expect(work.length).toBeGreaterThan(inputsOf(definition).filter((input) => !input.optional).length);
      for (const row of work) {
        expect(row.length).toBe(5);
        const [symbol, meaning, , value] = row;
        expect(String(symbol)).not.toBe('');
        expect(String(meaning)).not.toBe('');
        expect(value === null || value === '').toBe(false);
      }
      expect(work.slice(-answers.length).map((row) => row[3])).toEqual(answers);
      expect(String(one('SHOW.SOURCE', name)).length).toBeGreaterThan(10);
      expect(String(one('SHOW.CAUTION', name)).length).toBeGreaterThan(10);
      const verdict = worksheetFunctions
        .find(({ id }) => id === 'SHOW.CHECK')
        ?.call([[[name]], ...args])[0]?.[0];
      expect(typeof verdict).toBe('string');
      expect(String(verdict).length).toBeGreaterThan(7);
    },
  );

  it('gives the source of the very value of a table', () => {
    expect(one('SHOW.SOURCE', 'RESIN.VALUE', 'PP', 'diffusivity')).toContain('Crawford');
    expect(one('SHOW.SOURCE', 'RESIN.VALUE', 'PP', 'eject temperature')).toContain('From memory, unverified');
  });

  it('passes on why a calculation was refused', () => {
    expect(refusal('SHOW.WORK', 'SEAT.FORCE', 400, 0, 0.15).message).toContain('draft is 0 deg');
  });
});

describe('UNIT.CONVERT', () => {
  it.each([
    [2.5, 'in', 'mm', 63.5],
    [212, '°F', '°C', 100],
    [50, 'lbf', 'N', 222.41108076302498],
    [7, 'mm', 'mm', 7],
  ])('of %d %s to %s is %d', (value, from, to, expected) => {
    expect(one('UNIT.CONVERT', value, from, to)).toBeCloseTo(expected, 11);
  });

  it('broadcasts', () => {
    expect(call('UNIT.CONVERT', [[1], [2]], 'in', [['mm', 'cm']])).toEqual([
      [25.4, 2.54],
      [50.8, 5.08],
    ]);
  });

  it.each([
    [[1, 'in', 'psi'], 'to is "psi"; from "in", a length, it takes in, mm, m, cm, µm, thou, ft.'],
    [[1, 'furlong', 'm'], 'from is "furlong", which is no unit known here.'],
    [['x', 'in', 'mm'], 'value is "x"; it takes a number.'],
    [[1, null, 'mm'], 'from takes the symbol of a unit as text.'],
  ] as const)('of %j is refused', (args, message) => {
    expect(refusal('UNIT.CONVERT', ...args).message).toBe(message);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/catalogue';
import { CellError, type Argument, type CellValue, type Matrix } from '../../src/cells/value';
import { worksheetFunctions } from '../../src/call/functions';
import { inputsOf } from '../../src/core/define';
import { checksOf } from '../support/checks';
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
    [['SEAT.FORCE', SEAT, 'draft', [[null], [null]]], 'valuesA holds no values.'],
    [['SEAT.FORCE', SEAT, 'draft', [[null]]], 'valuesA is missing.'],
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
    expect(refusal('TRY.SOLVE', 'SEAT.STIFFNESS', SEAT, 'insertMetal', 1, 0, 1).message).toContain(
      'neither a quantity nor one of a few words',
    );
    expect(refusal('TRY.SOLVE', 'SPRING.PRELOAD', SPRING, 'shim', 60, 10, 0).message).toContain('above low');
  });
});

describe('TRY.SOLVE on several answers', () => {
  const grip: Matrix = [
    ['grip', 2],
    ['contactArea', 1000],
    ['friction', 0.3],
  ];

  it('gives the end of a stretch that is met first from low', () => {
    // The part falls off from tan a = µ on, whatever the draft beyond.
    const falls = (Math.atan(0.3) * 180) / Math.PI;
    fc.assert(
      fc.property(fc.double({ min: 17, max: 44, noNaN: true }), (high) => {
        const found = Number(one('TRY.SOLVE', 'EJECT.FORCE', grip, 'draft', 0, 0.5, high, 'mm'));
        expect(Math.abs(found / falls - 1)).toBeLessThan(1e-9);
      }),
    );
    expect(one('TRY.SOLVE', 'EJECT.FORCE', grip, 'draft', 0, 20, 40, 'mm')).toBe(20);
  });

  it('gives the first of two answers, where the ends lie on the same side of the target', () => {
    // The dynamic of 4 x (1 − x): chip thickness 2 f √(q(1 − q)) at q = a_e/D is the same at q and at 1 − q.
    const chip: Matrix = [
      ['chipLoad', 0.1],
      ['diameter', 10],
    ];
    const at = one('CUT.CHIP', 0.1, 2, 10, 'mm');
    expect(one('TRY.SOLVE', 'CUT.CHIP', chip, 'radialDepth', at, 0.5, 9.9, 'mm')).toBeCloseTo(2, 9);
  });

  it('tries whole numbers one by one, and names those beside a target that none gives', () => {
    const pins: Matrix = [
      ['force', 1000],
      ['pinDia', 5],
    ];
    const at = one('EJECT.PINPRESSURE', 1000, 7, 5, 'mm');
    expect(one('TRY.SOLVE', 'EJECT.PINPRESSURE', pins, 'pins', at, 1, 20, 'mm')).toBe(7);
    const { message } = refusal('TRY.SOLVE', 'EJECT.PINPRESSURE', pins, 'pins', 7, 1, 20, 'mm');
    expect(message).toMatch(/7 gives 7\.\d+ MPa, 8 gives 6\.\d+ MPa/);
  });

  it('tries the words of a choice', () => {
    const stock: Matrix = [
      ['seatWidthTol', 0.01],
      ['draft', 5],
      ['cutoffTol', 0.02],
      ['touchTol', 0.01],
    ];
    const rss = one('FLUSH.STOCK', 0.01, 5, 0.02, 0.01, undefined, undefined, 'rss', 'mm');
    expect(one('TRY.SOLVE', 'FLUSH.STOCK', stock, 'method', rss, 0, 1, 'mm')).toBe('rss');
    expect(refusal('TRY.SOLVE', 'FLUSH.STOCK', stock, 'method', 5, 0, 1, 'mm').message).toContain(
      'rss gives',
    );
  });
});

describe('TRY.MATCH', () => {
  const seat: Matrix = [
    ['push', 300],
    ['draft', 5],
  ];

  it('finds again the value that trials were made with, whatever the scatter of the settings', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.06, max: 0.55, noNaN: true }),
        fc.uniqueArray(fc.integer({ min: 1, max: 40 }), { minLength: 2, maxLength: 6 }),
        (friction, drafts) => {
          const made = drafts.map((draft) => [one('SEAT.FORCE', 300, draft, friction, 'mm')]) as Matrix;
          const [[value, error, miss] = []] = call(
            'TRY.MATCH', 'SEAT.FORCE', seat, 'friction', 'draft', drafts.map((d) => [d]), made, 0.02, 0.6, 'mm',
          ); // prettier-ignore
          expect(Math.abs(Number(value) / friction - 1)).toBeLessThan(1e-7);
          expect(Number(error)).toBeLessThan(1e-6);
          expect(Math.abs(Number(miss))).toBeLessThan(1e-3);
        },
      ),
    );
  });

  it('of a straight line is the line of the books: θ = Σxy/Σx², its error s/√Σx²', () => {
    const [x, y] = [[10, 20, 30], [52, 97, 151]] as const; // prettier-ignore
    const spring: Matrix = [['freeLength', 40]];
    const [[value, error, miss] = []] = call(
      'TRY.MATCH', 'SPRING.FORCE', spring, 'rate', 'length', [x.map((one) => 40 - one)], [[...y]], 1, 20, 'mm',
    ); // prettier-ignore
    const sxx = x.reduce((sum, one) => sum + one * one, 0);
    const slope = x.reduce((sum, one, i) => sum + one * (y[i] as number), 0) / sxx;
    const misses = x.map((one, i) => (y[i] as number) - slope * one);
    expect(value).toBeCloseTo(slope, 9);
    expect(error).toBeCloseTo(Math.sqrt(misses.reduce((sum, r) => sum + r * r, 0) / 2 / sxx), 9);
    expect(miss).toBeCloseTo(misses.find((r) => Math.abs(r) === Math.max(...misses.map(Math.abs))) ?? NaN, 8);
  });

  it('finds the number that stands for a name: a diffusivity for the resin of a cooling time', () => {
    // A time of cooling is a number over the diffusivity, so that the fit is the line of the books once more.
    const [walls, factor] = [[1, 1.5, 2], [8, 18.5, 31.6]] as const; // prettier-ignore
    const held: Matrix = [['meltTemp', 220], ['moldTemp', 40], ['ejectTemp', 60]]; // prettier-ignore
    const [[value] = []] = call(
      'TRY.MATCH', 'COOL.TIME', held, 'resin', 'wall', walls.map((one) => [one]), factor.map((one) => [one]), 0.01, 1, 'mm',
    ); // prettier-ignore
    const unit = walls.map((wall) => Number(one('COOL.TIME', wall, 1, 220, 40, 60, 'center', 'mm')));
    const inverse = unit.reduce((sum, t, i) => sum + t * (factor[i] ?? NaN), 0) / unit.reduce((sum, t) => sum + t * t, 0); // prettier-ignore
    expect(value).toBeCloseTo(1 / inverse, 9);
  });

  it('passes over trials that are not made yet, and refuses what is no fit', () => {
    const lengths: Matrix = [[35], [30], [''], [20]];
    const spring: Matrix = [['freeLength', 40]];
    const fit = (...rest: Given[]): Given[] => ['SPRING.FORCE', spring, ...rest, 'mm'];
    expect(call('TRY.MATCH', ...fit('rate', 'length', lengths, [[25], [50], [''], [100]], 1, 20))[0]?.[0]).toBeCloseTo(5, 9); // prettier-ignore
    const message = (...rest: Given[]): string => refusal('TRY.MATCH', ...fit(...rest)).message;
    expect(message('rate', 'length', lengths, [[25], [50], [''], ['']], 1, 20)).toContain(
      'measured has no entry',
    );
    expect(message('rate', 'rate', lengths, lengths, 1, 20)).toContain('varied is rate');
    expect(message('rate', 'length', [[30]], [[50]], 1, 20)).toContain('one trial');
    expect(message('rate', 'length', [[35, 30]], [[25, 50]], 6, 20)).toContain(
      'low is 6 N/mm, and the best value lies there',
    );
    expect(message('rate', 'length', [[40, 41]], [[0, 0]], 1, 20)).toContain(
      'argument is rate, which changes nothing',
    );
  });
});

describe('TRY.SWING', () => {
  it('ranks by the swing, with the local change', () => {
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

  it('has the local change that calculus gives', () => {
    const table = call(
      'TRY.SWING',
      'SEAT.FORCE',
      [
        ['push', 400, 350, 450],
        ['draft', 5, 4, 6],
        ['friction', 0.15, 0.1, 0.2],
      ],
      'mm',
    );
    const [a, mu] = [(5 * Math.PI) / 180, 0.15];
    const [sine, cosine, below] = [Math.sin(a), Math.cos(a), Math.sin(a) + mu * Math.cos(a)];
    const local = Object.fromEntries(table.slice(1).map(([name, , , , change]) => [String(name), change]));
    expect(local.push).toBeCloseTo(1, 11);
    expect(local.draft).toBeCloseTo((-a * (cosine - mu * sine)) / below, 11);
    expect(local.friction).toBeCloseTo((-mu * cosine) / below, 11);
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
    expect(refusal('TRY.SPREAD', 'FILL.GATE', wall, 1e9).message).toContain('at most 1000000');
    expect(one('TRY.SPREAD', 'FILL.GATE', wall, 300_000)).toBeTypeOf('number');
  });
});

describe('SHOW', () => {
  it('knows the basis', () => {
    expect(String(one('SHOW.BASIS'))).toBe('basis 2, 2.0.0');
  });

  it.each(catalogue.map((definition) => [definition.name, definition] as const))(
    'tells all of %s',
    (name, definition) => {
      const checks = checksOf(definition);
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

  it('checks what is usual, and names a number that fits the other units', () => {
    expect(one('SHOW.CHECK', 'SEAT.FORCE', 2000, 5, 0, 'mm')).toBe('friction 0: usually 0.05 to 0.6.');
    expect(one('SHOW.CHECK', 'PLATE.RING', 15, 40, 25, '200 GPa')).toContain(
      'the number would be usual in mm: is the unit as meant?',
    );
    expect(one('SHOW.CHECK', 'PLATE.RING', 15, 40, 25, '200 GPa', 'mm')).toBe('in range; strength not known');
  });

  it('tells the margin of pillars by hand, and what no margin can be told of', () => {
    // F/(n A) = 200000/(2 × 78.54) = 1273.2 MPa against 830 MPa.
    const pillars = ['PLATE.PILLAR', 200_000, 2, 10, 60, 'P20', 'mm'] as const;
    expect(one('SHOW.MARGIN', ...pillars)).toBeCloseTo(830 / (200_000 / (2 * 25 * Math.PI)), 9);
    expect(one('SHOW.CHECK', ...pillars)).toContain(
      'Does not hold: P20 prehard (metal) yields. Yield is 0.65 × the stress',
    );
    expect(refusal('SHOW.MARGIN', 'SEAT.FORCE', 2000, 5, 0.15).message).toContain('PLATE.PILLAR');
    expect(refusal('SHOW.MARGIN', 'PLATE.PILLAR', 200_000, 2, 10, 60, '205 GPa', 'mm')).toMatchObject({
      code: '#N/A',
      message: expect.stringContaining('strength is not known') as string,
    });
    expect(refusal('METAL.MARGIN', 100, 205_000, 'mm')).toMatchObject({
      code: '#N/A',
      message: expect.stringContaining('strength is not known') as string,
    });
  });

  it('gives a step by its symbol, its letter or its meaning, in the unit of the work', () => {
    const step = (name: string): CellValue => one('SHOW.STEP', 'SEAT.SPREAD', name, 2000, 5, 0.15, 'mm');
    expect(step('phi')).toBeCloseTo((Math.atan(0.15) * 180) / Math.PI, 12);
    expect(step('φ')).toBe(step('phi'));
    expect(step('friction angle')).toBe(step('phi'));
    expect(refusal('SHOW.STEP', 'SEAT.SPREAD', 'Q', 2000, 5, 0.15, 'mm')).toMatchObject({
      code: '#N/A',
      message: expect.stringContaining('phi (Friction angle)') as string,
    });
  });

  it('gives the unit of a result, and says where it depends on what is asked for', () => {
    const unit = (...args: Given[]): CellValue => one('SHOW.UNIT', ...args);
    expect(unit('CLAMP.TONNAGE')).toBe('US ton');
    expect(unit('CLAMP.TONNAGE', 'mm')).toBe('t');
    expect(unit('CLAMP.SPARE')).toBe('');
    expect(unit('TAP.DRILLNAME')).toBe('text');
    expect(unit('FIT.LIMITS', 'mm')).toBe('mm');
    expect(refusal('SHOW.UNIT', 'METAL.VALUE').code).toBe('#N/A');
  });

  it('passes on why a calculation was refused', () => {
    expect(refusal('SHOW.WORK', 'SEAT.FORCE', 400, 0, 0.15).message).toContain('draft is 0 deg');
    expect(refusal('SHOW.WORK', 'SEAT.STIFFNESS', 5, 0.15, 10, 12, 10, 'P20', 'P20', 'mm').message).toContain(
      'blockRadius is 10 mm; it must be larger than seatRadius, 10 mm',
    );
  });
});

describe('UNIT.CONVERT', () => {
  it.each([
    [2.5, 'in', 'mm', 63.5],
    [212, '°F', '°C', 100],
    [50, 'lbf', 'N', 222.41108076302498],
    [7, 'mm', 'mm', 7],
    [1, 'gal', 'L', 3.785411784],
    [2.5, 'L', 'mL', 2500],
    [1, 'L', 'in³', 61.02374409473229],
    [3000, 'rpm', '1/s', 50],
    [5, 'mm/s', 'm/min', 0.3],
    [20, 'tpi', 'mm', 1.27],
    [1.27, 'mm', 'tpi', 20],
    [1, 'kgf/cm²', 'MPa', 0.0980665],
    ['3/8', 'in', 'mm', 9.525],
    ['1 1/2', 'in', 'mm', 38.1],
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
    [['x', 'in', 'mm'], 'value is "x"; it takes a number such as 2.5 or "1 1/2".'],
    [
      ['2,5', 'in', 'mm'],
      'value is "2,5", which has a comma: decimals take a point; it takes a number such as 2.5 or "1 1/2".',
    ],
    [[null, 'in', 'mm'], 'value is missing.'],
    [[1, null, 'mm'], 'from is missing.'],
    [[1, 5, 'mm'], 'from takes the symbol of a unit as text.'],
    [[0, 'tpi', 'mm'], 'value is 0, which has no value in mm.'],
  ] as const)('of %j is refused', (args, message) => {
    expect(refusal('UNIT.CONVERT', ...args).message).toBe(message);
  });
});

describe('UNIT.FORMULA', () => {
  const formula = (...args: Given[]): CellValue => one('UNIT.FORMULA', ...args);

  it.each<[string, Matrix, string | undefined, number, string]>([
    [
      'F/(pi/4*d^2)',
      [
        ['F', 500, 'lbf'],
        ['d', 0.25, 'in'],
      ],
      'psi',
      500 / ((Math.PI / 4) * 0.0625),
      'by hand: both in inches and pounds',
    ],
    [
      'F*L^3/(3*E*I)',
      [
        ['F', 50, 'N'],
        ['L', 40, 'mm'],
        ['E', 205, 'GPa'],
        ['I', 12.5, 'mm^4'],
      ],
      'mm',
      (50 * 64_000) / (3 * 205_000 * 12.5),
      'by hand in N and mm',
    ],
    [
      'T_2-T_1',
      [
        ['T_1', 20, '°C'],
        ['T_2', 212, '°F'],
      ],
      'K',
      80,
      '212 °F is 100 °C',
    ],
    ['T', [['T', 25, '°C']], '°F', 77, '25 °C is 77 °F'],
    [
      'a*L*dT',
      [
        ['a', 12, 'µm/(m·K)'],
        ['L', 100, 'mm'],
        ['dT', 50, 'Δ°C'],
      ],
      'mm',
      0.06,
      '12e-6 × 100 × 50',
    ],
    ['x ≥ 3 ? 2·x : x/2', [['x', 4]], undefined, 8, 'signs of print'],
    ['d²', [['d', '1/2 in']], 'in²', 0.25, 'a fraction with its unit'],
    [
      'p*0.85',
      [
        ['p', '90 %'],
        ['', ''],
        [null, null],
      ],
      undefined,
      0.765,
      'rows without a symbol are left out',
    ],
    ['=b', [['b', '0.5 in', 'mm']], 'mm', 12.7, 'the unit within the value counts'],
  ])('%s of %j in %s is %f: %s', (equation, inputs, unit, expected) => {
    expect(formula(equation, inputs, unit)).toBeCloseTo(expected, 9);
  });

  it.each<[string, Matrix, string | undefined, RegExp]>([
    [
      'F+d',
      [
        ['F', 1, 'lbf'],
        ['d', 1, 'in'],
      ],
      'lbf',
      /unlike quantities \(a force, a length\)/,
    ],
    [
      'F*d',
      [
        ['F', 1, 'lbf'],
        ['d', 1, 'in'],
      ],
      'psi',
      /"psi", a unit of a pressure; the equation gives a torque/,
    ],
    [
      'F*d',
      [
        ['F', 1, 'lbf'],
        ['d', 1, 'in'],
      ],
      undefined,
      /unit is missing: the equation gives a torque; name its unit/,
    ],
    [
      'F/A',
      [
        ['F', 1, 'stonez'],
        ['A', 1, 'in²'],
      ],
      'psi',
      /for F, "stonez", which is no unit/,
    ],
    ['F/B', [['F', 1, 'N']], 'N', /names B, which has no row in inputs; there are F/],
    [
      'F',
      [
        ['F', 1, 'N'],
        ['F', 2, 'N'],
      ],
      'N',
      /names F more than once/,
    ],
    ['F', [['F', null, 'N']], 'N', /no value for F/],
    ['F', [['F', '0,5', 'N']], 'N', /has a comma/],
    ['F', [['F', true, 'N']], 'N', /takes a number/],
    ['F', [['F', '3 in', 'N']], 'N', /is no N/],
    ['pi', [['pi', 3]], undefined, /pi, which is the constant/],
    ['a', [['a b', 3]], undefined, /"a b", which is no symbol/],
    ['2a', [['a', 3]], undefined, /multiplication without a sign/],
    ['1/(a-a)', [['a', 3]], undefined, /no finite value/],
    ['sin(d)', [['d', 3, 'in']], undefined, /takes a ratio or an angle/],
    ['x', [['x']], undefined, /has 1 column/],
    ['x', [['x', 1]], 'furlong', /unit is "furlong", which is no unit/],
    ['sqrt(0-a)', [['a', 1]], undefined, /no finite value/],
  ])('refuses %s of %j in %s: %s', (equation, inputs, unit, message) => {
    expect(refusal('UNIT.FORMULA', equation, inputs, unit).message).toMatch(message);
  });

  it('passes on the error of a cell', () => {
    expect(formula('a', [['a', new CellError('#DIV/0!')]])).toMatchObject({ code: '#DIV/0!' });
  });

  it('gives the same in whatever units its inputs and its result are', () => {
    const lengths = [
      ['in', 25.4],
      ['mm', 1],
      ['cm', 10],
      ['ft', 304.8],
      ['thou', 0.0254],
      ['µm', 1e-3],
    ] as const;
    const one = fc.constantFrom(...lengths);
    fc.assert(
      fc.property(
        one,
        one,
        one,
        fc.double({ min: 1e-3, max: 1e3, noNaN: true }),
        fc.double({ min: 1e-3, max: 1e3, noNaN: true }),
        (a, b, out, x, y) => {
          const value = formula(
            'sqrt(a^2+b^2)',
            [
              ['a', x, a[0]],
              ['b', y, b[0]],
            ],
            out[0],
          );
          const expected = Math.hypot(x * a[1], y * b[1]) / out[1];
          expect(Math.abs(Number(value) - expected)).toBeLessThanOrEqual(1e-12 * expected);
        },
      ),
    );
  });
});

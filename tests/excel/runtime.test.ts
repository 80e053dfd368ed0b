import { beforeAll, describe, expect, it } from 'vitest';
import { CellError, type Argument, type CellValue, type Matrix } from '../../src/cells/value';
import { worksheetFunctions } from '../../src/call/functions';
import type { WorksheetFunction } from '../../src/call/worksheetFunction';
import type { FunctionsJson } from '../../src/excel/functionsJson';
import { errorArgument, isBuilt, readBuilt, startRuntime, type ExcelResult, type Runtime } from './runtime';

/** An argument as the core takes it, and the same as Excel sends it. */
interface Sample {
  readonly core: Argument;
  readonly excel: unknown;
}

const both = (value: unknown): Sample => ({ core: value as Argument, excel: value });
const OMITTED: Sample = { core: null, excel: null };
const NUMBER = both([[0.3]]);
const SAMPLES: Readonly<Record<string, Sample>> = {
  'nothing at all': OMITTED,
  'a number': NUMBER,
  'a blank cell as 0': both([[0]]),
  'a blank cell as null': both([[null]]),
  'text of length 0': both([['']]),
  'text with a unit': both([['1/4 in']]),
  'text that means nothing': both([['qzx']]),
  true: both([[true]]),
  'a column': both([[0.2], [0.4], ['qzx']]),
  'a row': both([[0.2, 0.4, null]]),
  'a block': both([
    [0.2, 0.4],
    [0.3, ''],
  ]),
  'an error': { core: [[new CellError('#DIV/0!')]], excel: [[errorArgument('#DIV/0!')]] },
  'a column with an error': {
    core: [[0.3], [new CellError('#N/A')]],
    excel: [[0.3], [errorArgument('#N/A')]],
  },
  'a huge number': both([[1e308]]),
};

/** Every function with every sample in every place, the other arguments plain numbers; then all left out. */
const cases = (fn: WorksheetFunction): { readonly what: string; readonly samples: readonly Sample[] }[] => [
  { what: 'all left out', samples: fn.parameters.map(() => OMITTED) },
  ...fn.parameters.flatMap(({ name }, place) =>
    Object.entries(SAMPLES).map(([what, sample]) => ({
      what: `${name}: ${what}`,
      samples: fn.parameters.map(({ optional }, i) => (i === place ? sample : optional ? OMITTED : NUMBER)),
    })),
  ),
];

/** What Excel must get for an answer of the core. */
const expected = (answer: Matrix): unknown => {
  const cells = answer.map((row) => row.map(expectedCell));
  return answer.length === 1 && answer[0]?.length === 1 && answer[0][0] instanceof CellError
    ? cells[0]?.[0]
    : cells;
};

/** The functions of numbers carry no equations as texts: a step without a value is called by its symbol alone. */
const withoutEquation = (message: string): string =>
  message.replace(/^(The step \w+) = .* (has no finite value)/, '$1 $2');

const expectedCell = (value: CellValue): unknown =>
  value instanceof CellError
    ? expect.objectContaining({
        basicType: 'Error',
        basicValue: value.code,
        ...(value.message && { message: withoutEquation(value.message) }),
      })
    : value;

describe.skipIf(!isBuilt)('the built functions in the real functions runtime', () => {
  let runtime: Runtime;
  beforeAll(() => {
    runtime = startRuntime();
  });

  it('are those of functions.json', () => {
    const { functions } = JSON.parse(readBuilt('functions.json')) as FunctionsJson;
    expect([...runtime.ids].sort()).toEqual(functions.map(({ id }) => id).sort());
  });

  it('are those of the catalogue', () => {
    expect([...runtime.ids].sort()).toEqual(worksheetFunctions.map(({ id }) => id).sort());
  });

  it.each(worksheetFunctions.map((fn) => [fn.id, fn] as const))('%s answers as the core', async (id, fn) => {
    const all = cases(fn);
    const results = await runtime.call(
      all.map(({ samples }) => ({ id, given: samples.map(({ excel }) => excel) })),
    );
    all.forEach(({ what, samples }, i) => {
      const { succeeded, value } = results[i] as ExcelResult;
      expect(succeeded, what).toBe(true);
      expect(value, what).toEqual(expected(fn.call(samples.map(({ core }) => core))));
      expect([value].flat(2), what).not.toContain(null);
    });
  });

  it('take a call with fewer arguments, as a sheet of an older version makes', async () => {
    const [fn] = worksheetFunctions as [WorksheetFunction];
    const required = fn.parameters.filter(({ optional }) => !optional).map(() => [[0.3]]);
    const [short, whole] = await runtime.call([
      { id: fn.id, given: required },
      { id: fn.id, given: fn.parameters.map((_, i) => required[i] ?? null) },
    ]);
    expect(short).toEqual(whole);
  });

  it('say in words that their texts could not be loaded, and go on with numbers', async () => {
    const cut = startRuntime({ loads: false });
    const [work, force] = await cut.call([
      { id: 'SHOW.WORK', given: [[['SEAT.FORCE']], [[[400]], [[5]], [[0.15]]]] },
      { id: 'SEAT.FORCE', given: [[[400]], [[5]], [[0.15]], null] },
    ]);
    expect(work?.value).toMatchObject({
      basicValue: '#N/A',
      message: expect.stringContaining('within 5 s') as string,
    });
    expect(force?.value).toEqual([[expect.closeTo(1690.72, 1)]]);
  });

  it('keep the message of a refusal', async () => {
    const [fn] = worksheetFunctions as [WorksheetFunction];
    const [result] = await runtime.call([{ id: fn.id, given: fn.parameters.map(() => null) }]);
    expect(result?.value).toMatchObject({
      basicValue: '#VALUE!',
      message: expect.stringContaining('missing') as string,
    });
  });
});

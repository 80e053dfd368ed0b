import { beforeAll, describe, expect, it, vi } from 'vitest';
import { CellError } from '../../src/cells/value';
import type { WorksheetFunction } from '../../src/call/worksheetFunction';
import type { ParameterWords } from '../../src/derive/words';
import { readArguments, writeAnswer } from '../../src/excel/cells';

/** Of Excel's class, what the conversion touches. */
class ExcelError {
  constructor(
    readonly code: string,
    readonly message?: string,
  ) {}
}

beforeAll(() => {
  vi.stubGlobal('CustomFunctions', { Error: ExcelError });
});

const parameter = (name: string, repeating = false): ParameterWords => ({
  name,
  says: name,
  optional: true,
  repeating,
});
const fn = (...parameters: ParameterWords[]): WorksheetFunction => ({
  id: 'GROUP.FN',
  family: 'GROUP',
  summary: '',
  parameters,
  call: () => [[0]],
});
const invocation = { functionName: 'GROUP.FN', address: 'Sheet1!A1' };

describe('arguments from Excel', () => {
  it('are matrices, or null where left out; the invocation object is none of them', () => {
    const two = fn(parameter('a'), parameter('b'));
    expect(readArguments(two.parameters, [[[1, 'x', true]], null, invocation])).toEqual([
      [[1, 'x', true]],
      null,
    ]);
    expect(readArguments(two.parameters, [[[1]], invocation])).toEqual([[[1]], null]);
  });

  it('may be single values, as an old description of the function would send them', () => {
    expect(readArguments(fn(parameter('a')).parameters, [5, invocation])).toEqual([[[5]]]);
  });

  it('keep blanks apart from zero where Excel does', () => {
    expect(readArguments(fn(parameter('a')).parameters, [[[null, 0, '']]])).toEqual([[[null, 0, '']]]);
  });

  it('carry errors along', () => {
    const [argument] = readArguments(fn(parameter('a')).parameters, [[[new ExcelError('#DIV/0!')]]]);
    expect(argument).toEqual([[new CellError('#DIV/0!')]]);
  });

  it('say so where a cell holds something else than number, text or error', () => {
    const [argument] = readArguments(fn(parameter('a')).parameters, [[[{ type: 'Entity', text: 'x' }]]]);
    expect(argument?.[0]?.[0]).toMatchObject({
      code: '#VALUE!',
      message: expect.stringContaining('data type') as string,
    });
  });

  it('that repeat come as one list of matrices', () => {
    const repeating = fn(parameter('a'), parameter('more', true));
    expect(readArguments(repeating.parameters, [[[1]], [[[2]], [[3, 4]]], invocation])).toEqual([
      [[1]],
      [[2]],
      [[3, 4]],
    ]);
    expect(readArguments(repeating.parameters, [[[1]], null, invocation])).toEqual([[[1]], null]);
  });
});

describe('answers to Excel', () => {
  it('are matrices, blanks empty text', () => {
    expect(
      writeAnswer([
        [1, 'x'],
        [true, null],
      ]),
    ).toEqual([
      [1, 'x'],
      [true, ''],
    ]);
  });

  it('are one bare error where there is but one', () => {
    expect(writeAnswer([[new CellError('#VALUE!', 'why')]])).toEqual(new ExcelError('#VALUE!', 'why'));
    expect(writeAnswer([[1, new CellError('#N/A', 'why')]])).toEqual([[1, new ExcelError('#N/A', 'why')]]);
  });

  it('have a message only where Excel keeps it', () => {
    expect(writeAnswer([[new CellError('#NUM!', 'why')]])).toEqual(new ExcelError('#NUM!'));
  });

  it('turn errors that Excel takes in but not back into one that says what came', () => {
    expect(writeAnswer([[new CellError('#REF!')]])).toEqual(
      new ExcelError('#VALUE!', 'An argument is #REF!'),
    );
  });
});

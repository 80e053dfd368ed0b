import * as formulaEngine from '@univerjs/engine-formula';
import { describe, expect, it } from 'vitest';
import { worksheetFunctions } from '../../src/call/functions';
import type { WorksheetFunction } from '../../src/call/worksheetFunction';
import { functionsJson, type ExcelFunction } from '../../src/excel/functionsJson';
import { functionsJsonFaults } from './functionsJsonFaults';

/** The native functions, as the formula engine of the page lists them. */
const builtIn = new Set(
  Object.entries(formulaEngine)
    .filter(([name]) => name.startsWith('FUNCTION_NAMES_'))
    .flatMap(([, names]) => Object.values(names as Record<string, string>)),
);
const helpUrl = (id: string): string => `https://tools.example/help/${id}.html`;

const fake = (id: string, parameters: WorksheetFunction['parameters'] = []): WorksheetFunction => ({
  id,
  family: 'FAMILY',
  summary: 'What it gives.',
  parameters,
  call: () => [[1]],
});
const parameter = { name: 'width', says: 'Width, in or mm', optional: false, repeating: false };

describe('functions.json of the catalogue', () => {
  const file = functionsJson(worksheetFunctions, helpUrl);

  it('breaks no rule', () => {
    expect(functionsJsonFaults(file, builtIn)).toEqual([]);
  });

  it('has every function, in order', () => {
    expect(file.functions.map(({ id }) => id)).toEqual(worksheetFunctions.map(({ id }) => id));
    expect(file.functions.length).toBeGreaterThan(0);
  });

  it('declares every parameter and every result as a matrix of any', () => {
    const typed = file.functions.flatMap(({ parameters, result }) => [...parameters, result]);
    for (const { type, dimensionality } of typed) expect([type, dimensionality]).toEqual(['any', 'matrix']);
  });
});

describe('the generator', () => {
  it('carries over meaning, optional and repeating', () => {
    const { functions } = functionsJson(
      [
        fake('GROUP.FN', [
          parameter,
          { ...parameter, name: 'loads', says: 'Loads', optional: true, repeating: true },
        ]),
      ],
      helpUrl,
    );
    expect(functions).toEqual([
      {
        id: 'GROUP.FN',
        name: 'GROUP.FN',
        description: 'What it gives.',
        helpUrl: 'https://tools.example/help/GROUP.FN.html',
        parameters: [
          { name: 'width', description: 'Width, in or mm', type: 'any', dimensionality: 'matrix' },
          {
            name: 'loads',
            description: 'Loads',
            type: 'any',
            dimensionality: 'matrix',
            optional: true,
            repeating: true,
          },
        ],
        result: { type: 'any', dimensionality: 'matrix' },
      },
    ]);
  });

  it('leaves out pick lists, which Excel never shows for a parameter of type any, and keeps the words in the help', () => {
    const says = 'How it adds up. One of: "worst", "rss"';
    const file = functionsJson(
      [fake('AAA', [{ ...parameter, name: 'method', says, choices: ['worst', 'rss'] }])],
      helpUrl,
    );
    expect(Object.keys(file).sort()).toEqual(['allowErrorForDataTypeAny', 'functions']);
    expect(file.functions[0]?.parameters).toEqual([
      { name: 'method', description: says, type: 'any', dimensionality: 'matrix' },
    ]);
  });
});

describe('the rules find', () => {
  const right = functionsJson(
    [
      fake('GROUP.FN', [
        parameter,
        { ...parameter, name: 'fit', optional: true },
        { ...parameter, name: 'loads', optional: true, repeating: true },
      ]),
    ],
    helpUrl,
  );
  const [fn] = right.functions as [ExcelFunction];
  const [width, fit, loads] = fn.parameters as [object, object, object];
  const withFn = (change: object) => ({ ...right, functions: [{ ...fn, ...change }] });
  const named = (name: string) => withFn({ id: name, name });
  const withParameters = (...parameters: object[]) => withFn({ parameters });
  const long = (length: number) => 'X'.repeat(length);

  it('nothing wrong in the file they start from', () => {
    expect(functionsJsonFaults(right, builtIn)).toEqual([]);
  });

  const wrong: [what: string, file: unknown, fault: string][] = [
    ['a missing list of functions', { ...right, functions: undefined }, 'functions is missing'],
    ['too many functions', { ...right, functions: Array(20_001).fill(fn) }, 'more than 20,000 functions'],
    ['a field that Excel does not know', { ...right, version: 1 }, 'Excel knows no version'],
    [
      'errors kept from the functions',
      { ...right, allowErrorForDataTypeAny: false },
      'would not reach the functions',
    ],
    [
      'an id given twice, in other case',
      { ...right, functions: [fn, { ...fn, id: 'Group.fn' }] },
      'id Group.fn is there twice',
    ],
    ['a name given twice', { ...right, functions: [fn, fn] }, 'name GROUP.FN is there twice'],
    ['ids that are stored alike', { ...right, functions: [fn, { ...fn, id: 'GROUP_FN' }] }, 'stored alike'],
    ['an id that starts with a digit', named('1GROUP'), '"1GROUP" is not an id'],
    ['an id with a space', named('GROUP FN'), 'is not an id'],
    ['an id that is too short', named('AB'), 'is not an id'],
    ['an id that is too long', named(long(65)), 'is not an id'],
    ['an id in lower case', named('group.fn'), 'is not an id'],
    ['a name other than the id', withFn({ name: 'OTHER' }), 'the name must be the id'],
    ['a name that reads as a cell', named('XFD1048576'), 'reads as a cell reference'],
    ['a name that reads as a row and column', named('R1C1'), 'reads as a cell reference'],
    ['a word of the old macro language', named('ECHO'), 'old macro language'],
    ['the name of a built-in function', named('NORM.DIST'), 'NORM.DIST is a built-in function'],
    ['a missing description', withFn({ description: '' }), 'description has 0 characters'],
    [
      'a description that is too long',
      withFn({ description: long(1025) }),
      'description has 1025 characters',
    ],
    ['help without https', withFn({ helpUrl: 'http://tools.example' }), 'help must be https'],
    ['missing parameters', withFn({ parameters: undefined }), 'parameters is missing'],
    [
      'too many parameters',
      withParameters(...(Array(129).fill(width) as object[])),
      'more than 128 parameters',
    ],
    ['a missing result', withFn({ result: undefined }), 'result is missing'],
    [
      'a result of an unknown type',
      withFn({ result: { type: 'date', dimensionality: 'matrix' } }),
      'result: type must be one of',
    ],
    [
      'a result of unknown shape',
      withFn({ result: { type: 'any', dimensionality: 'row' } }),
      'result: dimensionality must be one of',
    ],
    ['a parameter without a name', withParameters({ ...width, name: '' }), 'name has 0 characters'],
    [
      'a parameter name that is too long',
      withParameters({ ...width, name: long(65) }),
      'name has 65 characters',
    ],
    [
      'a parameter description that is too long',
      withParameters({ ...width, description: long(513) }),
      'description has 513',
    ],
    ['a parameter of an unknown type', withParameters({ ...width, type: 'date' }), 'type must be one of'],
    [
      'a parameter of unknown shape',
      withParameters({ ...width, dimensionality: 'row' }),
      'dimensionality must be one of',
    ],
    ['an unknown field of a parameter', withParameters({ ...width, unit: 'mm' }), 'Excel knows no unit'],
    [
      'a cell type without any',
      withParameters({ ...width, type: 'number', cellValueType: 'cellvalue' }),
      'needs type any',
    ],
    ['a pick list', { ...right, enums: [] }, 'Excel knows no enums'],
    [
      'a parameter with a pick list',
      withParameters({ ...width, customEnumId: 'ANY' }),
      'Excel knows no customEnumId',
    ],
    [
      'a required parameter after an optional one',
      withParameters(fit, width),
      'required parameter after an optional',
    ],
    [
      'a repeating parameter before the last',
      withParameters(loads, fit),
      'only the last parameter may repeat',
    ],
    [
      'a repeating scalar',
      withParameters({ ...loads, dimensionality: 'scalar' }),
      'repeating parameter must be a matrix',
    ],
    ['stream with cancelable', withFn({ options: { stream: true, cancelable: true } }), 'exclude each other'],
    ['a volatile function', withFn({ options: { volatile: true } }), 'recalculates at every edit'],
    ['an option that is a preview', withFn({ options: { supportSync: true } }), 'Excel knows no supportSync'],
    [
      'parameter addresses without a matrix',
      withFn({
        options: { requiresParameterAddresses: true },
        result: { type: 'any', dimensionality: 'scalar' },
      }),
      'needs a matrix result',
    ],
  ];

  it.each(wrong)('%s', (_what, file, fault) => {
    expect(functionsJsonFaults(file, builtIn).join('\n')).toContain(fault);
  });
});

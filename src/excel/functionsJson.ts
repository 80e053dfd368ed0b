import type { FunctionWords, ParameterWords } from '../derive/words';

/**
 * Excel's description of the custom functions (functions.json). Every parameter and every result is a matrix of
 * `any`: Excel gives `#CALC!` for a range in a scalar parameter, and never calls a function that got text for a
 * number, so only this form lets us broadcast and refuse with a message of our own.
 */
export interface FunctionsJson {
  readonly allowErrorForDataTypeAny: true;
  readonly enums: readonly ExcelEnum[];
  readonly functions: readonly ExcelFunction[];
}

export interface ExcelEnum {
  readonly id: string;
  readonly type: 'string';
  readonly values: readonly { readonly name: string; readonly stringValue: string }[];
}

export interface ExcelFunction {
  readonly id: string;
  readonly name: string;
  readonly description: string;
  readonly helpUrl: string;
  readonly parameters: readonly ExcelParameter[];
  readonly result: { readonly type: 'any'; readonly dimensionality: 'matrix' };
}

export interface ExcelParameter {
  readonly name: string;
  readonly description: string;
  readonly type: 'any';
  readonly dimensionality: 'matrix';
  readonly optional?: true;
  readonly repeating?: true;
  readonly customEnumId?: string;
}

/** `helpUrl` gives the https address of a function's help page. */
export const functionsJson = (
  functions: readonly FunctionWords[],
  helpUrl: (id: string) => string,
): FunctionsJson => {
  const lists = new PickLists();
  return {
    allowErrorForDataTypeAny: true,
    functions: functions.map((fn) => ({
      id: fn.id,
      name: fn.id,
      // Excel offers whatever it is to know, so that the former name says what it is.
      description: fn.aliasOf === undefined ? fn.summary : `Another name of ${fn.aliasOf}. ${fn.summary}`,
      helpUrl: helpUrl(fn.aliasOf ?? fn.id),
      parameters: fn.parameters.map((parameter) => excelParameter(fn, parameter, lists)),
      result: { type: 'any', dimensionality: 'matrix' },
    })),
    enums: lists.all(),
  };
};

const excelParameter = (
  fn: FunctionWords,
  { name, says, optional, repeating, choices }: ParameterWords,
  lists: PickLists,
): ExcelParameter => ({
  name,
  description: says,
  type: 'any',
  dimensionality: 'matrix',
  ...(optional && { optional }),
  ...(repeating && { repeating }),
  ...(choices && { customEnumId: lists.idOf(fn, name, choices) }),
});

/** The pick lists of all parameters. Parameters with the same name and the same words share one. */
class PickLists {
  readonly #lists = new Map<string, ExcelEnum>();

  idOf(fn: FunctionWords, parameter: string, words: readonly string[]): string {
    const values = words.map((word) => ({ name: word, stringValue: word }));
    // An id has at least three characters, and the name of a parameter may be shorter.
    const shared = `LIST_${parameter.toUpperCase()}`;
    const known = this.#lists.get(shared);
    const id = known && !sameWords(known, words) ? `${shared}_${fn.id.replaceAll('.', '_')}` : shared;
    this.#lists.set(id, { id, type: 'string', values });
    return id;
  }

  all(): ExcelEnum[] {
    return [...this.#lists.values()];
  }
}

const sameWords = (list: ExcelEnum, words: readonly string[]): boolean =>
  list.values.length === words.length && list.values.every((value, i) => value.stringValue === words[i]);

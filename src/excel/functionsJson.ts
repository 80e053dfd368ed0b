import type { FunctionWords, ParameterWords } from '../derive/words';

/**
 * Excel's description of the custom functions (functions.json). Every parameter and every result is a matrix of
 * `any`: Excel gives `#CALC!` for a range in a scalar parameter, and never calls a function that got text for a
 * number, so only this form lets us broadcast and refuse with a message of our own. Pick lists (`enums`) are left out:
 * Microsoft's generator ties them to parameters of type string or number, so on ours they would never show, and one
 * value that Excel refuses would cost the whole file. The words stand in the description, and the panel puts a list on
 * the cell that an argument reads.
 */
export interface FunctionsJson {
  readonly allowErrorForDataTypeAny: true;
  readonly functions: readonly ExcelFunction[];
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
}

/** `helpUrl` gives the https address of a function's help page. */
export const functionsJson = (
  functions: readonly FunctionWords[],
  helpUrl: (id: string) => string,
): FunctionsJson => ({
  allowErrorForDataTypeAny: true,
  functions: functions.map((fn) => ({
    id: fn.id,
    name: fn.id,
    // Excel offers whatever it is to know, so that the former name says what it is.
    description: fn.aliasOf === undefined ? fn.summary : `Another name of ${fn.aliasOf}. ${fn.summary}`,
    helpUrl: helpUrl(fn.aliasOf ?? fn.id),
    parameters: fn.parameters.map(excelParameter),
    result: { type: 'any', dimensionality: 'matrix' },
  })),
});

const excelParameter = ({ name, says, optional, repeating }: ParameterWords): ExcelParameter => ({
  name,
  description: says,
  type: 'any',
  dimensionality: 'matrix',
  ...(optional && { optional }),
  ...(repeating && { repeating }),
});

import { BooleanNumber } from '@univerjs/core';
import { FunctionType, type IFunctionInfo } from '@univerjs/engine-formula';

import { NAMESPACE } from '../cells/namespace';
import type { WorksheetFunction } from '../call/worksheetFunction';
import { argumentText } from '../panel/argumentText';

/** What the grid's autocomplete and argument help say of the functions. */
export function functionDescriptions(functions: readonly WorksheetFunction[]): IFunctionInfo[] {
  return functions.map(({ id, summary, parameters }) => ({
    functionName: `${NAMESPACE}.${id}`,
    functionType: FunctionType.User,
    abstract: summary,
    description: summary,
    functionParameter: parameters.map((parameter) => ({
      name: parameter.name,
      detail: argumentText(parameter),
      example: parameter.name,
      require: parameter.optional ? BooleanNumber.FALSE : BooleanNumber.TRUE,
      repeat: parameter.repeating ? BooleanNumber.TRUE : BooleanNumber.FALSE,
    })),
  }));
}

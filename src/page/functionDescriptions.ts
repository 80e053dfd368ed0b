import { BooleanNumber } from '@univerjs/core';
import { FunctionType, type IFunctionInfo } from '@univerjs/engine-formula';

import { NAMESPACE } from '../cells/namespace';
import { isListed, type FunctionWords } from '../derive/words';

/** What the grid's autocomplete and argument help say of the functions. */
export function functionDescriptions(functions: readonly FunctionWords[]): IFunctionInfo[] {
  return functions.filter(isListed).map(({ id, summary, parameters }) => ({
    functionName: `${NAMESPACE}.${id}`,
    functionType: FunctionType.User,
    abstract: summary,
    description: summary,
    functionParameter: parameters.map((parameter) => ({
      name: parameter.name,
      detail: parameter.says,
      example: parameter.name,
      require: parameter.optional ? BooleanNumber.FALSE : BooleanNumber.TRUE,
      repeat: parameter.repeating ? BooleanNumber.TRUE : BooleanNumber.FALSE,
    })),
  }));
}

import { catalogue } from '../catalogue';
import { tools } from './tools';
import { toolFunction } from './tools/tool';
import { worksheetFunctionsOf } from './worksheet';
import type { WorksheetFunction } from './worksheetFunction';

/** Every function as the hosts see it; those that are only other names of another say so. */
export const worksheetFunctions: readonly WorksheetFunction[] = [
  ...catalogue.flatMap(worksheetFunctionsOf),
  ...tools.map(toolFunction),
];

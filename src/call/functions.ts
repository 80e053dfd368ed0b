import { catalogue } from '../catalogue';
import { tools } from './tools';
import { toolFunction } from './tools/tool';
import { worksheetFunction } from './worksheet';
import type { WorksheetFunction } from './worksheetFunction';

/** Every function as the hosts see it. */
export const worksheetFunctions: readonly WorksheetFunction[] = [
  ...catalogue.map(worksheetFunction),
  ...tools.map(toolFunction),
];

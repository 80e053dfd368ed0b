import { catalogue } from '../catalogue';
import { worksheetFunction } from './worksheet';
import type { WorksheetFunction } from './worksheetFunction';

/** Every function of the catalogue as the hosts see it. */
export const worksheetFunctions: readonly WorksheetFunction[] = catalogue.map(worksheetFunction);

import { INDEX } from './references';
import { ROUND } from './rounding';
import type { SheetFunction } from './spec';
import { SUM } from './sums';

/** Every function but ours, which the workbook brings along, and the language's own (IF, LET and their kind). */
export const sheetFunctions: readonly SheetFunction[] = [INDEX, ROUND, SUM];

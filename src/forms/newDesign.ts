/** A workbook of a design. */
import type { WorksheetFunction } from '../call/worksheetFunction';
import { newWorkbook } from '../package';
import type { Workbook } from '../package/model';
import type { DesignWish } from './design';
import { FONT } from './looks';
import { planNewSheets } from './newSheets';
import { sheetOf } from './plan';
import { writePlans } from './write';

export function newDesign(wish: DesignWish, functions: readonly WorksheetFunction[]): Promise<Workbook> {
  const { sheets, plans, title } = planNewSheets(wish);
  const empty = newWorkbook({ sheets: sheets.map(sheetOf), font: FONT, properties: { title } });
  return writePlans(empty, plans, functions);
}

/** A workbook of a design. */
import type { WorksheetFunction } from '../call/worksheetFunction';
import { newWorkbook } from '../package';
import type { SheetDescription } from '../package/description';
import type { Workbook } from '../package/model';
import type { DesignWish } from './design';
import { FONT } from './looks';
import { planNewSheets } from './newSheets';
import { FOOTER, type NewSheet } from './plan';
import { writePlans } from './write';

export function newDesign(wish: DesignWish, functions: readonly WorksheetFunction[]): Promise<Workbook> {
  const { sheets, plans, title } = planNewSheets(wish);
  const empty = newWorkbook({ sheets: sheets.map(sheetOf), font: FONT, properties: { title } });
  return writePlans(empty, plans, functions);
}

const sheetOf = ({ name, tabColor, frozen, landscape, margins }: NewSheet): SheetDescription => ({
  name,
  ...(tabColor !== undefined && { tabColor }),
  gridlines: false,
  ...(frozen !== undefined && { freeze: `A${frozen + 1}` }),
  cells: {},
  print: {
    paper: 'Letter',
    ...(landscape && { landscape }),
    ...(frozen !== undefined && { titleRows: `${frozen}:${frozen}` }),
    footer: FOOTER,
    margins,
  },
});

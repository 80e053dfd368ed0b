/// <reference types="office-js" />
import type { DefinedName } from '../package/model';
import type { NamesAndSheets } from '../whatif/kept/record';

/** The names of the open workbook and of its sheets, as a file would have them, without reading the file. */
export async function namesAndSheets(context: Excel.RequestContext): Promise<NamesAndSheets> {
  const { names, worksheets } = context.workbook;
  names.load('items/name,items/formula');
  worksheets.load('items/name');
  await context.sync();
  return {
    names: names.items.map(({ name, formula }): DefinedName => ({
      name,
      formula: String(formula).replace(/^=/, ''),
      hidden: false,
    })),
    sheets: worksheets.items.map(({ name }) => ({ name })),
  };
}

/// <reference types="office-js" />
import { worksheetFunctions } from '../call/functions';
import { base64 } from './files';
import { reenterFormulas } from './reenter';
import { writeDesignSheets } from './writeDesignSheets';

/** File names of the design sheets that were built with the add-in. */
export const designSheetNames = async (): Promise<readonly string[]> =>
  (await (await fetchFile('samples/index.json')).json()) as readonly string[];

/**
 * Puts the sheets of a design workbook behind those of the open one and shows the first. Gives their names.
 * @throws Error with a message for the person where that cannot be done.
 */
export const insertDesignSheet = async (fileName: string): Promise<readonly string[]> => {
  const bytes = new Uint8Array(await (await fetchFile(`samples/${fileName}`)).arrayBuffer());
  if (!Office.context.requirements.isSetSupported('ExcelApi', '1.13')) {
    const { readWorkbook } = await import('../panel/share/library');
    return writeDesignSheets(
      readWorkbook(
        bytes,
        worksheetFunctions.map(({ id }) => id),
      ),
    );
  }
  const file = base64(bytes);
  const { ids, names } = await Excel.run(async (context) => {
    const { worksheets } = context.workbook;
    const inserted = context.workbook.insertWorksheetsFromBase64(file, {
      positionType: Excel.WorksheetPositionType.end,
    });
    await context.sync();
    const sheets = inserted.value.map((id) => worksheets.getItem(id));
    for (const sheet of sheets) sheet.load('name');
    sheets[0]?.activate();
    await context.sync();
    return { ids: inserted.value, names: sheets.map(({ name }) => name) };
  });
  await reenterFormulas(ids);
  return names;
};

const fetchFile = async (address: string): Promise<Response> => {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`${address} could not be loaded (${response.status}).`);
  return response;
};

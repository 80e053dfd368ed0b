import type { Workbook } from '../package/model';
import type { Changes } from '../package/changes';
import { Failure } from './command';
import { readBytes, writeBytes } from './files';

export async function openWorkbook(path: string): Promise<Workbook> {
  const bytes = await readBytes(path);
  const [{ readWorkbook, UnreadableWorkbook }, { worksheetFunctions }] = await Promise.all([
    import('../package'),
    import('../call/functions'),
  ]);
  try {
    return readWorkbook(
      bytes,
      worksheetFunctions.map(({ id }) => id),
    );
  } catch (error) {
    if (error instanceof UnreadableWorkbook) throw new Failure(`${path} cannot be read. ${error.message}`);
    throw error;
  }
}

export async function writeWorkbook(path: string, workbook: Workbook, changes: Changes): Promise<void> {
  const [{ fileEnding }, { saveCalculated }] = await Promise.all([
    import('../package'),
    import('../workbook/basis'),
  ]);
  const ending = fileEnding(workbook.parts);
  if (/\.xls[xm]$/i.test(path) && !path.toLowerCase().endsWith(ending))
    throw new Failure(
      ending === '.xlsm'
        ? `The workbook holds macros: name the file to write .xlsm, or spreadsheet programs refuse it.`
        : `The workbook holds no macros: name the file to write .xlsx, or spreadsheet programs refuse it.`,
    );
  await writeBytes(path, saveCalculated(workbook, changes));
}

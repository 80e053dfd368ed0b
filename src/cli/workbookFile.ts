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
  await endsRight(path, workbook);
  const { saveCalculated } = await import('../workbook/basis');
  await writeBytes(path, saveCalculated(workbook, changes));
}

/** Refuses a name by which spreadsheet programs would refuse the workbook. */
export async function endsRight(path: string, { parts }: Workbook): Promise<void> {
  const { fileEnding } = await import('../package');
  const ending = fileEnding(parts);
  if (/\.xls[xm]$/i.test(path) && !path.toLowerCase().endsWith(ending))
    throw new Failure(
      ending === '.xlsm'
        ? `The workbook holds macros: name the file to write .xlsm, or spreadsheet programs refuse it.`
        : `The workbook holds no macros: name the file to write .xlsx, or spreadsheet programs refuse it.`,
    );
}

/** Refuses a file that is no workbook under the name of one, where it may stand in the place of a design. */
export function refuseWorkbookName(path: string, what: string): void {
  if (/\.xls[xm]$/i.test(path)) throw new Failure(`${what} is an HTML file: name it .html.`);
}

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
  const { saveWorkbook } = await import('../package');
  await writeBytes(path, saveWorkbook(workbook, changes));
}

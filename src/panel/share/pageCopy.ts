import { worksheetFunctions } from '../../call/functions';
import type { WorkbookFiles } from './files';

/** A page made of the workbook. */
export interface PageCopy {
  readonly fileName: string;
  readonly bytes: Uint8Array;
}

/** The page without a workbook lies beside the panel. */
const TEMPLATE = 'one-page.html';

export async function pageCopy(files: WorkbookFiles): Promise<PageCopy> {
  const [{ onePage }, workbook, template] = await Promise.all([
    import('../../share/onePage'),
    files.read(),
    fetch(TEMPLATE).then((answer) => {
      if (!answer.ok) throw new Error(`The page’s own program (${TEMPLATE}) cannot be reached.`);
      return answer.text();
    }),
  ]);
  const file = files.name();
  const html = onePage(workbook, worksheetFunctions, {
    file,
    date: new Date().toLocaleDateString('sv'),
    template,
  });
  return { fileName: file.replace(/\.xl\w+$/i, '') + '.html', bytes: new TextEncoder().encode(html) };
}

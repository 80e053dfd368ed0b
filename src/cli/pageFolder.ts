import { realpathSync } from 'node:fs';
import { dirname, join } from 'node:path';

/** The workbook page lies beside the program's own file. */
export const pageFolder = (): string => join(dirname(realpathSync(process.argv[1] ?? '.')), 'page');

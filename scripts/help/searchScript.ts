import { resolve } from 'node:path';
import { buildSync } from 'esbuild';
import { worksheetFunctions } from '../../src/call/functions';
import { documentsOf } from '../../src/call/search';

/** The search of the help's list as one script: the pages may ask nobody for an index. */
export function searchScript(root: string): string {
  const { outputFiles } = buildSync({
    entryPoints: [resolve(root, 'scripts/help/search.ts')],
    bundle: true,
    minify: true,
    write: false,
    format: 'iife',
    target: 'es2022',
    define: { DOCUMENTS: JSON.stringify(documentsOf(worksheetFunctions)) },
  });
  return outputFiles[0]?.text ?? '';
}

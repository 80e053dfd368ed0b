import { build } from 'esbuild';
import { Module } from 'node:module';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = resolve(dirname(fileURLToPath(import.meta.url)), '../..');

/** The module that is replaced. */
export const REPLACED = join(root, 'src/core/equations.ts');

/**
 * The equations of the catalogue as JavaScript, and the files that they come from. With `alsoOthers` a formula that the
 * catalogue does not hold, such as one of a test, is interpreted.
 */
export async function generate({ alsoOthers = false } = {}) {
  const { outputFiles, metafile } = await build({
    absWorkingDir: root,
    entryPoints: ['scripts/equations/equationsModule.ts'],
    bundle: true,
    write: false,
    metafile: true,
    platform: 'node',
    format: 'cjs',
    logLevel: 'error',
  });
  const generator = new Module(join(root, 'equationsModule.cjs'));
  generator._compile(outputFiles[0].text, generator.id);
  return {
    text: generator.exports.equationsModule({ alsoOthers }),
    files: Object.keys(metafile.inputs)
      .filter((file) => !file.includes('node_modules'))
      .map((file) => join(root, file)),
  };
}

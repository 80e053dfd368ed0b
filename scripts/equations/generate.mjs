import { build } from 'esbuild';
import { createHash } from 'node:crypto';
import { mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
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

/** The same, from the last time where each of its files holds what it held then. */
export async function generateOrKept(options = {}) {
  const file = join(root, 'node_modules/.cache/equations.json');
  try {
    const kept = JSON.parse(readFileSync(file, 'utf8'));
    if (kept.contents === contentsOf(kept.files, options)) return kept;
  } catch {
    // Nothing was kept, or one of the files is gone.
  }
  const began = Date.now();
  const made = await generate(options);
  // What was changed meanwhile may have been read before.
  if (made.files.some((from) => statSync(from).mtimeMs >= began)) return made;
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, JSON.stringify({ ...made, contents: contentsOf(made.files, options) }));
  return made;
}

/** A hash of the files, of what asks for them and of the versions of packages. */
function contentsOf(files, options) {
  const hash = createHash('sha256').update(JSON.stringify([files, options]));
  for (const file of [...files, fileURLToPath(import.meta.url), join(root, 'package-lock.json')])
    hash.update(readFileSync(file)).update('\0');
  return hash.digest('hex');
}

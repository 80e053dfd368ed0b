const { Buffer } = require('node:buffer');
const { createHash } = require('node:crypto');
const fs = require('node:fs');
const path = require('node:path');
const { gzipSync } = require('node:zlib');
const { build } = require('esbuild');

const root = path.resolve(__dirname, '../..');
const folder = path.join(root, 'src/onefile');

/** Puts the equations of the catalogue, compiled, in the place of the module that interprets them. */
const equations = {
  name: 'equations',
  setup({ onLoad }) {
    onLoad({ filter: /[\\/]src[\\/]core[\\/]equations\.ts$/ }, async ({ path: file }) => {
      const { generate } = await import('../../scripts/equations/generate.mjs');
      const { text, files } = await generate();
      return { contents: text, loader: 'js', resolveDir: path.dirname(file), watchFiles: files };
    });
  },
};

/** One script, complete in itself, for any browser that can unpack it. */
async function script(entry) {
  const { outputFiles } = await build({
    entryPoints: [path.join(folder, entry)],
    bundle: true,
    minify: true,
    write: false,
    format: 'iife',
    target: 'es2022',
    logLevel: 'error',
    plugins: [equations],
  });
  return outputFiles[0].text.trim();
}

const hashOf = (text) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;

/** The one-file page without its workbook: `src/share/onePage.ts` fills it in. */
async function template() {
  const [program, boot] = await Promise.all([script('index.ts'), script('boot.ts')]);
  const packed = gzipSync(Buffer.from(program), { level: 9 }).toString('base64');
  const css = fs.readFileSync(path.join(folder, 'page.css'), 'utf8');
  const filled = {
    policy: `default-src 'none'; script-src ${hashOf(boot)} ${hashOf(program)}; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'`,
    style: `<style>${css}</style>`,
    program: `<script id="program" type="text/plain">${packed}</script>\n<script>${boot}</script>`,
  };
  return fs
    .readFileSync(path.join(folder, 'template.html'), 'utf8')
    .replace(/\{\{(\w+)\}\}/g, (all, name) => filled[name] ?? all);
}

/** Where no build watches, what several targets carry is made once. */
let made;

/** Puts the page's template into `one-page.html`. */
module.exports = {
  apply(compiler) {
    const { RawSource } = compiler.webpack.sources;
    const emitted = { name: 'onePage', stage: compiler.webpack.Compilation.PROCESS_ASSETS_STAGE_ADDITIONAL };
    compiler.hooks.thisCompilation.tap('onePage', (compilation) => {
      compilation.hooks.processAssets.tapPromise(emitted, async () => {
        if (compiler.watchMode) made = undefined;
        made ??= template();
        compilation.emitAsset('one-page.html', new RawSource(await made), { minimized: true });
      });
    });
  },
  template,
};

const { createHash } = require('node:crypto');
const path = require('node:path');
const { build } = require('esbuild');

const WORKER = path.resolve(__dirname, '../../src/page/offline/worker.ts');
const hash = (algorithm, content, as) => createHash(algorithm).update(content).digest(as);

/** Emits `worker.js`, which knows every other file of this build and its content. */
module.exports = {
  apply(compiler) {
    const { RawSource } = compiler.webpack.sources;
    // Behind all that makes or renames files.
    const last = { name: 'offline', stage: compiler.webpack.Compilation.PROCESS_ASSETS_STAGE_REPORT };
    compiler.hooks.thisCompilation.tap('offline', (compilation) => {
      compilation.hooks.processAssets.tapPromise(last, async () => {
        const files = compilation.getAssets().map(({ name, source }) => {
          const content = source.buffer();
          return {
            url: name,
            // Scripts and styles carry a hash of their content in the name.
            revision: /\.[0-9a-f]{8}\.(js|css)$/.test(name) ? null : hash('sha256', content, 'hex'),
            integrity: `sha256-${hash('sha256', content, 'base64')}`,
          };
        });
        const { outputFiles } = await build({
          entryPoints: [WORKER],
          bundle: true,
          minify: true,
          write: false,
          format: 'iife',
          target: 'es2022',
          define: { FILES: JSON.stringify(files), 'process.env.NODE_ENV': '"production"' },
          logLevel: 'error',
        });
        compilation.emitAsset('worker.js', new RawSource(outputFiles[0].text), { minimized: true });
      });
    });
  },
};

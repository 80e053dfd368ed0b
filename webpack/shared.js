const fs = require('node:fs');
const path = require('node:path');
const CssPlugin = require('mini-css-extract-plugin');
const tsx = require('tsx/cjs/api');
const onlyWoff2 = require('./loaders/onlyWoff2');

const root = path.resolve(__dirname, '..');

/** Modules of one build know each other's classes only under one name; a build that watches takes another each time. */
let namespace = 'build';

/** Loads modules of ours into the build itself. */
const loadAll = (files) => {
  const api = tsx.register({ namespace });
  try {
    return files.map((file) => api.require(path.join(root, file), module.filename));
  } finally {
    api.unregister();
  }
};
const load = (file) => loadAll([file])[0];

/** The checks beside the definitions: the examples of the help. */
const checksFiles = () =>
  fs
    .readdirSync(path.join(root, 'src/catalogue'), { recursive: true })
    .filter((file) => file.endsWith('.checks.ts'))
    .map((file) => path.join('src/catalogue', file));

/** The files of help by their names. Their equations use the fonts of the panel, in fonts/. */
async function helpFiles() {
  const [{ helpPages }, ...checks] = loadAll(['scripts/help/pages.ts', ...checksFiles()]);
  const katex = fs.readFileSync(require.resolve('katex/dist/katex.min.css'), 'utf8');
  return [
    ...(await helpPages(checks.map((file) => file.default))),
    ['help/search.js', load('scripts/help/searchScript.ts').searchScript(root)],
    ['help/help.css', fs.readFileSync(path.join(root, 'scripts/help/help.css'), 'utf8')],
    ['help/katex.css', onlyWoff2(katex).replaceAll('url(fonts/', 'url(../fonts/')],
  ];
}

/** Page and add-in carry the same help: it is made once, but where a build watches. */
let madeHelp;

/** Writes the pages of help into help/. */
const help = {
  apply(compiler) {
    const { RawSource } = compiler.webpack.sources;
    const emitted = { name: 'help', stage: compiler.webpack.Compilation.PROCESS_ASSETS_STAGE_ADDITIONAL };
    compiler.hooks.watchRun.tap('help', () => {
      namespace = String(Date.now());
    });
    compiler.hooks.thisCompilation.tap('help', (compilation) => {
      compilation.hooks.processAssets.tapPromise(emitted, async () => {
        if (compiler.watchMode) madeHelp = undefined;
        madeHelp ??= helpFiles();
        for (const [name, text] of await madeHelp)
          compilation.emitAsset(name, new RawSource(text), { minimized: true });
      });
    });
  },
};

/** Puts the sample workbooks into samples/, and their names into samples/index.json. */
const samples = {
  apply(compiler) {
    const { RawSource } = compiler.webpack.sources;
    const folder = path.join(root, 'samples');
    compiler.hooks.thisCompilation.tap('samples', (compilation) => {
      compilation.hooks.processAssets.tap('samples', () => {
        const files = fs.existsSync(folder) ? fs.readdirSync(folder) : [];
        const workbooks = files.filter((file) => file.endsWith('.xlsx')).sort();
        for (const file of workbooks) {
          compilation.emitAsset(`samples/${file}`, new RawSource(fs.readFileSync(path.join(folder, file))));
        }
        compilation.emitAsset('samples/index.json', new RawSource(JSON.stringify(workbooks)));
      });
    });
  },
};

const typescript = {
  rules: [
    {
      test: /\.tsx?$/,
      exclude: /node_modules/,
      loader: path.join(__dirname, 'loaders/typescript.js'),
    },
    {
      test: path.join(root, 'src/core/equations.ts'),
      enforce: 'pre',
      loader: path.join(__dirname, 'loaders/equations.js'),
    },
  ],
};

/** What all targets have in common. Types are checked by `npm run types`, not by every build. */
module.exports = {
  root,
  load,
  samples,
  help,
  dist: path.join(root, 'dist'),
  styles: [
    {
      test: /\.css$/,
      use: [CssPlugin.loader, 'css-loader', path.join(__dirname, 'loaders/onlyWoff2.js')],
    },
    { test: /\.woff2$/, type: 'asset/resource', generator: { filename: 'fonts/[name][ext]' } },
  ],
  resolve: { extensions: ['.ts', '.tsx', '.js'] },
  typescript,
};

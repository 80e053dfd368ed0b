const { Buffer } = require('node:buffer');
const path = require('node:path');
const CopyPlugin = require('copy-webpack-plugin');
const HtmlPlugin = require('html-webpack-plugin');
const MinimizerPlugin = require('minimizer-webpack-plugin');
const CssPlugin = require('mini-css-extract-plugin');
const { root, dist, load, resolve, typescript, styles, samples, help } = require('./shared');
const onePage = require('./plugins/onePage');

/** The layers: the functions of numbers without their texts, and all the rest. */
const NUMBERS = 'numbers';
const WHOLE = 'whole';

const OFFICE_ADDRESS = 'https://appsforoffice.microsoft.com';

/** Writes what is derived from our own sources: functions.json and the icons. */
const derived = (origin) => ({
  apply(compiler) {
    const { RawSource } = compiler.webpack.sources;
    const emitted = { name: 'derived', stage: compiler.webpack.Compilation.PROCESS_ASSETS_STAGE_ADDITIONAL };
    compiler.hooks.thisCompilation.tap('derived', (compilation) => {
      compilation.hooks.processAssets.tap(emitted, () => {
        const emit = (name, content) => compilation.emitAsset(name, new RawSource(content));
        emit('functions.json', load('scripts/excel/functionsJson.ts').functionsJsonFor(origin));
        const { ICONS, ICON_SIZES, drawIcon } = load('scripts/excel/icons.ts');
        for (const name of Object.keys(ICONS)) {
          for (const size of ICON_SIZES)
            emit(`assets/${name}-${size}.png`, Buffer.from(drawIcon(name, size)));
        }
      });
    });
  },
});

/**
 * The Excel add-in: static files for any https server. `--env origin=https://…` says where they will be served from;
 * `--env office=local` puts Microsoft's unmodified office.js beside them, for a network without the internet.
 */
module.exports = (env = {}, argv = {}) => {
  const { manifestFor, readOrigin } = load('scripts/excel/manifest.ts');
  const origin = readOrigin(env.origin);
  const local = env.office === 'local';
  if (env.office !== undefined && !local) throw new Error(`office must be "local", not "${env.office}"`);
  const scripts = local ? "'self'" : `'self' ${OFFICE_ADDRESS}`;
  return {
    name: 'excel',
    mode: argv.mode ?? 'production',
    // Kept in a file of its own: the panel's content-security policy allows no eval.
    devtool: argv.mode === 'development' ? 'source-map' : false,
    entry: {
      // Small, since Excel shows #VALUE! for what is not there in time: modules of its layer are without their texts.
      functions: { import: path.join(root, 'src/excel/functions.ts'), layer: NUMBERS },
      taskpane: { import: path.join(root, 'src/excel/taskpane.tsx'), layer: WHOLE, dependOn: 'functions' },
    },
    experiments: { layers: true },
    output: {
      path: path.join(dist, 'excel'),
      filename: '[name].js',
      // Beside the panel's page. Finding it out at run time would need a page, and Excel may load the functions alone.
      publicPath: '',
      clean: true,
    },
    resolve,
    module: {
      rules: [
        // Before the rules of TypeScript, and so after them at work: it reads the compiled equations too.
        {
          issuerLayer: NUMBERS,
          test: /src[\\/](?:core[\\/]equations\.ts|(?:catalogue|tables|call[\\/]tools)[\\/].*\.ts)$/,
          enforce: 'pre',
          loader: path.join(__dirname, 'loaders/numbersAlone.js'),
        },
        typescript,
        ...styles,
        { test: /src[\\/]excel[\\/]whole\.ts$/, layer: WHOLE },
        // What the functions note and the panel reads: one and the same in both.
        { test: /src[\\/]excel[\\/]callLog\.ts$/, layer: 'shared' },
        { issuerLayer: NUMBERS, test: /src[\\/].*\.ts$/, sideEffects: false },
      ],
    },
    optimization: {
      // The slow one where each kB counts, three times over.
      minimizer: [
        new MinimizerPlugin({
          test: /functions\.js$/,
          minimizerOptions: { ecma: 2020, compress: { ecma: 2020, passes: 3 } },
        }),
        new MinimizerPlugin({ exclude: /functions\.js$/, minify: MinimizerPlugin.esbuildMinify }),
      ],
      splitChunks: {
        cacheGroups: {
          // With the panel it is there from the start; without it, it comes when a function asks for it.
          whole: {
            name: 'whole',
            chunks: 'all',
            enforce: true,
            test: ({ layer, resource }) =>
              layer === WHOLE &&
              /src[\\/](?:cells|core|tables|catalogue|derive|call)[\\/]|node_modules[\\/](?:mathjs|typed-function|d3-array|d3-random|pure-rand)[\\/]/.test(
                resource ?? '',
              ),
          },
        },
      },
    },
    plugins: [
      new HtmlPlugin({
        filename: 'taskpane.html',
        template: path.join(root, 'src/excel/taskpane.html'),
        templateParameters: {
          officeJs: local ? 'office/office.js' : `${OFFICE_ADDRESS}/lib/1/hosted/office.js`,
          // Fluent UI writes its styles into the page, hence 'unsafe-inline' for styles and for nothing else.
          csp: `default-src 'self'; script-src ${scripts}; style-src 'self' 'unsafe-inline'; img-src 'self' data: blob:; font-src 'self' data:; object-src 'none'; base-uri 'none'; form-action 'none'`,
        },
      }),
      new CssPlugin({ filename: '[name].css' }),
      new CopyPlugin({
        patterns: [
          {
            from: path.join(root, 'manifest.xml'),
            transform: (manifest) => manifestFor(manifest.toString(), origin),
          },
          ...(local ? officeFiles() : []),
        ],
      }),
      derived(origin),
      samples,
      help,
      onePage,
    ],
    performance: { hints: false },
  };
};

/**
 * Of Microsoft's package what Excel may ask for, unmodified and with its licence: not the other programs, not what is
 * only for debugging.
 */
const officeFiles = () => {
  const from = path.dirname(require.resolve('@microsoft/office-js/dist/office.js'));
  const ignore = [
    '**/*.debug.js',
    '**/*.ts',
    '**/office-vsdoc.js',
    '**/outlook*',
    ...['access', 'onenote', 'powerpoint', 'project', 'word'].map((program) => `**/${program}*.js`),
  ];
  return [
    // Marked as minimized, so that webpack leaves the files alone.
    { from: '**/*', context: from, to: 'office', globOptions: { ignore }, info: { minimized: true } },
    { from: path.join(from, '..', 'LICENSE.md'), to: 'office' },
  ];
};

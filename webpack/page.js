const path = require('node:path');
const HtmlPlugin = require('html-webpack-plugin');
const CssPlugin = require('mini-css-extract-plugin');
const CopyPlugin = require('copy-webpack-plugin');
const MinimizerPlugin = require('minimizer-webpack-plugin');
const { root, dist, resolve, typescript, styles, samples, help } = require('./shared');
const offline = require('./plugins/offline');
const onePage = require('./plugins/onePage');
const preload = require('./plugins/preload');

/** The workbook page: static files that any server can hand out. */
module.exports = (_env, argv = {}) => ({
  name: 'page',
  mode: argv.mode ?? 'production',
  // Kept in a file of its own: the page's content-security policy allows no eval.
  devtool: argv.mode === 'development' ? 'source-map' : false,
  entry: { start: path.join(root, 'src/page/index.ts') },
  output: {
    path: path.join(dist, 'page'),
    // Modules as functions in brackets, which the browser compiles as it reads them: nearly all run at the start, and
    // methods it would read twice. Node gains nothing by it.
    environment: { methodShorthand: false },
    filename: '[name].[contenthash:8].js',
    clean: true,
  },
  resolve,
  module: {
    rules: [
      typescript,
      ...styles,
      {
        test: /@univerjs[\\/]sheets-ui[\\/]lib[\\/]es[\\/]index\.js$/,
        loader: path.join(__dirname, 'loaders/formulasAsTyped.js'),
      },
      {
        test: /@univerjs[\\/]sheets-formula-ui[\\/]lib[\\/]es[\\/]index\.js$/,
        loader: path.join(__dirname, 'loaders/freshSuggestions.js'),
      },
      {
        test: /@univerjs[\\/]ui[\\/]lib[\\/]es[\\/]index\.js$/,
        loader: path.join(__dirname, 'loaders/drawnAtOnce.js'),
      },
      {
        test: /cjk-regex[\\/]lib[\\/]index\.js$/,
        loader: path.join(__dirname, 'loaders/cjkPatterns.js'),
      },
      // What is typed into the grid is read by the grid's core alone.
      {
        test: /@univerjs[\\/]core[\\/]lib[\\/]es[\\/]index\.js$/,
        loader: path.join(__dirname, 'loaders/longUndo.js'),
        resolve: { alias: { numfmt$: path.join(root, 'src/cells/entryNumbers.ts') } },
      },
    ],
  },
  // The default minimizer took nine tenths of the page's build.
  optimization: {
    minimizer: [new MinimizerPlugin({ minify: MinimizerPlugin.esbuildMinify })],
    // The grid and the controls are large and change seldom: fetched and compiled beside the rest, and kept over versions.
    splitChunks: {
      cacheGroups: Object.fromEntries(
        [
          [
            'controls',
            /[\\/]node_modules[\\/](@fluentui|@griffel|@floating-ui|react|react-dom|scheduler|tabster|keyborg)[\\/]/,
          ],
          ['grid', /[\\/]node_modules[\\/]/],
        ].map(([name, test], at) => [
          name,
          { name, test, chunks: (chunk) => chunk.name === 'page', enforce: true, priority: 20 - at },
        ]),
      ),
    },
  },
  plugins: [
    new HtmlPlugin({ template: path.join(root, 'src/page/index.html') }),
    new CssPlugin({ filename: '[name].[contenthash:8].css' }),
    new CopyPlugin({
      patterns: ['icon.svg', 'moldsheet.webmanifest'].map((file) => path.join(root, 'src/page', file)),
    }),
    preload,
    samples,
    help,
    onePage,
    // A page that is built anew at every change is served as it is.
    ...(argv.mode === 'development' ? [] : [offline]),
  ],
  performance: { hints: false },
});

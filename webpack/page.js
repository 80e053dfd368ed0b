const path = require('node:path');
const fs = require('node:fs');
const HtmlPlugin = require('html-webpack-plugin');
const CssPlugin = require('mini-css-extract-plugin');
const CopyPlugin = require('copy-webpack-plugin');
const { root, dist, resolve, typescript } = require('./shared');

const samples = path.join(root, 'samples');

/** Writes samples/index.json, the names of the workbooks that the page offers. */
const listSamples = {
  apply(compiler) {
    const { RawSource } = compiler.webpack.sources;
    compiler.hooks.thisCompilation.tap('samples', (compilation) => {
      compilation.hooks.processAssets.tap('samples', () => {
        const files = fs.existsSync(samples) ? fs.readdirSync(samples) : [];
        const workbooks = files.filter((file) => file.endsWith('.xlsx')).sort();
        compilation.emitAsset('samples/index.json', new RawSource(JSON.stringify(workbooks)));
      });
    });
  },
};

/** The workbook page: static files that any server can hand out. */
module.exports = (_env, argv = {}) => ({
  name: 'page',
  mode: argv.mode ?? 'production',
  // Kept in a file of its own: the page's content-security policy allows no eval.
  devtool: argv.mode === 'development' ? 'source-map' : false,
  entry: { page: path.join(root, 'src/page/index.tsx') },
  output: {
    path: path.join(dist, 'page'),
    filename: '[name].[contenthash:8].js',
    clean: true,
  },
  resolve,
  module: { rules: [typescript, { test: /\.css$/, use: [CssPlugin.loader, 'css-loader'] }] },
  plugins: [
    new HtmlPlugin({ template: path.join(root, 'src/page/index.html') }),
    new CssPlugin({ filename: '[name].[contenthash:8].css' }),
    new CopyPlugin({
      patterns: [
        path.join(root, 'src/page/icon.svg'),
        { from: '*.xlsx', context: samples, to: 'samples', noErrorOnMissing: true },
      ],
    }),
    listSamples,
  ],
  performance: { hints: false },
});

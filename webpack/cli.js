const path = require('node:path');
const MinimizerPlugin = require('minimizer-webpack-plugin');
const webpack = require('webpack');
const { root, dist, resolve, typescript } = require('./shared');
const { version } = require('../package.json');

/** The command line: one file that runs with Node alone. */
module.exports = (_env, argv = {}) => ({
  name: 'cli',
  mode: argv.mode ?? 'production',
  target: 'node20',
  devtool: false,
  entry: path.join(root, 'src/cli/index.ts'),
  output: { path: dist, filename: 'moldsheet.cjs' },
  resolve,
  module: {
    rules: [typescript],
    // One file: modules that are imported late stay in it and are run when first needed.
    parser: { javascript: { dynamicImportMode: 'eager' } },
  },
  // Small, since every start reads it as a whole.
  optimization: {
    minimizer: [new MinimizerPlugin({ minify: MinimizerPlugin.esbuildMinify, extractComments: false })],
  },
  plugins: [
    new webpack.DefinePlugin({ MOLDSHEET_VERSION: JSON.stringify(version) }),
    new webpack.BannerPlugin({ banner: '#!/usr/bin/env node', raw: true }),
  ],
  performance: { hints: false },
});

const path = require('node:path');
const MinimizerPlugin = require('minimizer-webpack-plugin');
const webpack = require('webpack');
const { root, dist, resolve, typescript } = require('./shared');
const { version } = require('../package.json');

/** The command line: one file to run with Node alone, and beside it in cli/ what single commands and families need. */
module.exports = (_env, argv = {}) => ({
  name: 'cli',
  mode: argv.mode ?? 'production',
  target: 'node20',
  devtool: false,
  entry: path.join(root, 'src/cli/index.ts'),
  output: {
    path: dist,
    filename: 'moldsheet.cjs',
    chunkFilename: 'cli/[id].cjs',
    // Page and add-in lie beside it.
    clean: { keep: (file) => !file.startsWith('cli/') },
  },
  resolve,
  module: { rules: [typescript] },
  // A start reads only what its command needs: no module stands in a file with others that need not come along.
  optimization: {
    splitChunks: {
      minSize: 1000,
      maxAsyncRequests: Infinity,
      cacheGroups: { defaultVendors: false },
    },
    minimizer: [new MinimizerPlugin({ minify: MinimizerPlugin.esbuildMinify, extractComments: false })],
  },
  plugins: [
    new webpack.DefinePlugin({ MOLDSHEET_VERSION: JSON.stringify(version) }),
    new webpack.BannerPlugin({ banner: '#!/usr/bin/env node', raw: true }),
  ],
  performance: { hints: false },
});

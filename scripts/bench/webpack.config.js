const path = require('node:path');
const { root, dist, resolve, typescript } = require('../../webpack/shared');

/** Compiled as what is shipped is: a development loader's own additions would be measured too. */
module.exports = {
  mode: 'production',
  target: 'node20',
  devtool: false,
  entry: path.join(root, 'scripts/bench/index.ts'),
  output: { path: dist, filename: 'bench.cjs' },
  resolve,
  // Its license keeps it out of every file that is made here.
  externals: { hyperformula: 'commonjs hyperformula' },
  module: { rules: [typescript] },
  stats: 'errors-only',
  performance: { hints: false },
};

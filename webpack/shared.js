const path = require('node:path');

const root = path.resolve(__dirname, '..');

/** What all targets have in common. Types are checked by `npm run types`, not by every build. */
module.exports = {
  root,
  dist: path.join(root, 'dist'),
  resolve: { extensions: ['.ts', '.tsx', '.js'] },
  typescript: {
    test: /\.tsx?$/,
    exclude: /node_modules/,
    loader: 'ts-loader',
    options: { transpileOnly: true, compilerOptions: { noEmit: false } },
  },
};

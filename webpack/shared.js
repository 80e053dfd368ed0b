const fs = require('node:fs');
const path = require('node:path');

const root = path.resolve(__dirname, '..');

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

/** What all targets have in common. Types are checked by `npm run types`, not by every build. */
module.exports = {
  root,
  samples,
  dist: path.join(root, 'dist'),
  resolve: { extensions: ['.ts', '.tsx', '.js'] },
  typescript: {
    test: /\.tsx?$/,
    exclude: /node_modules/,
    loader: 'ts-loader',
    options: { transpileOnly: true, compilerOptions: { noEmit: false } },
  },
};

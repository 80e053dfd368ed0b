const fs = require('node:fs');
const path = require('node:path');
const ts = require('typescript');

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

const DEFINES = new Set(['formula', 'lookup', 'procedure']);

/** Leaves the checks out of the definitions: they are for the tests, and a person waits for every kB. */
const withoutChecks = (context) => (file) => {
  const visit = (node) => {
    const [definition] = ts.isCallExpression(node) && DEFINES.has(node.expression.text) ? node.arguments : [];
    if (!definition || !ts.isObjectLiteralExpression(definition))
      return ts.visitEachChild(node, visit, context);
    const kept = definition.properties.filter((property) => property.name?.text !== 'checks');
    const shorter = ts.factory.updateObjectLiteralExpression(definition, kept);
    return ts.factory.updateCallExpression(node, node.expression, node.typeArguments, [shorter]);
  };
  return file.fileName.includes('/catalogue/') ? ts.visitNode(file, visit) : file;
};

const typescript = {
  test: /\.tsx?$/,
  exclude: /node_modules/,
  loader: 'ts-loader',
  options: { transpileOnly: true, compilerOptions: { noEmit: false } },
};

/** What all targets have in common. Types are checked by `npm run types`, not by every build. */
module.exports = {
  root,
  samples,
  dist: path.join(root, 'dist'),
  resolve: { extensions: ['.ts', '.tsx', '.js'] },
  typescript,
  typescriptWithoutChecks: {
    ...typescript,
    options: {
      ...typescript.options,
      // ts-loader keeps one compiler for each instance, and its transformers with it.
      instance: 'without-checks',
      getCustomTransformers: () => ({ before: [withoutChecks] }),
    },
  },
};

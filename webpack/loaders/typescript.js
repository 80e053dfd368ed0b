const { transform } = require('esbuild');
const { compilerOptions } = require('../../tsconfig.json');

const { target, jsx } = compilerOptions;

/** TypeScript as the browser or Node runs it, file by file; its types are checked by `npm run types`. */
module.exports = function typescript(source) {
  const done = this.async();
  transform(source, {
    loader: this.resourcePath.endsWith('x') ? 'tsx' : 'ts',
    target: target.toLowerCase(),
    sourcefile: this.resourcePath,
    sourcemap: this.sourceMap ? 'external' : false,
    tsconfigRaw: { compilerOptions: { target, jsx, verbatimModuleSyntax: true } },
  }).then(({ code, map }) => done(null, code, map || undefined), done);
};

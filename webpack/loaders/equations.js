/** Puts the equations of the catalogue, compiled, in the place of the module that interprets them. */
module.exports = function equations() {
  const done = this.async();
  import('../../scripts/equations/generate.mjs')
    .then(({ generate }) => generate())
    .then(({ text, files }) => {
      for (const file of files) this.addDependency(file);
      done(null, text);
    }, done);
};

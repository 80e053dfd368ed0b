/**
 * The grid tells Chinese, Japanese and Korean letters by three patterns, which a library works out of Unicode's tables at
 * every start. They are worked out here, by the same library: the tables stay away from the page.
 */
module.exports = function cjkPatterns() {
  const done = this.async();
  import('cjk-regex').then((library) => {
    const patterns = Object.entries(library).map(
      ([name, make]) => `export const ${name} = () => ({ toRegExp: () => ${make().toRegExp()} });\n`,
    );
    done(null, patterns.join(''));
  }, done);
};

const path = require('node:path');
const HtmlPlugin = require('html-webpack-plugin');
const { load } = require('../shared');

const { FIRST_SAMPLE } = load('src/panel/samples.ts');

/** Has the browser fetch what the page needs at once beside its first script, and not one after the other. */
module.exports = {
  apply(compiler) {
    const link = (attributes) => ({
      tagName: 'link',
      voidTag: true,
      attributes: { rel: 'preload', ...attributes },
      meta: {},
    });
    compiler.hooks.thisCompilation.tap('preload', (compilation) => {
      HtmlPlugin.getCompilationHooks(compilation).alterAssetTagGroups.tap('preload', (tags) => {
        const files = compilation.namedChunkGroups.get('page').getFiles();
        tags.headTags.push(
          ...files.map((file) =>
            link({ href: file, as: path.extname(file) === '.css' ? 'style' : 'script' }),
          ),
          ...['index.json', FIRST_SAMPLE].map((file) =>
            link({ href: `samples/${file}`, as: 'fetch', crossorigin: 'anonymous' }),
          ),
        );
        return tags;
      });
    });
  },
};

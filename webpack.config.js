const fs = require('node:fs');
const path = require('node:path');

/** Every file in webpack/ but shared.js is one target; `npx webpack --config-name cli` builds one alone. */
module.exports = fs
  .readdirSync(path.join(__dirname, 'webpack'))
  .filter((file) => file.endsWith('.js') && file !== 'shared.js')
  .sort()
  .map((file) => require(path.join(__dirname, 'webpack', file)));

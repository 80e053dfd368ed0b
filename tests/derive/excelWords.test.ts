import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { EXCEL_HELP, OWN_WHAT_IF, WITHOUT_ADD_IN } from '../../src/derive/excelWords';

it('says of a shared workbook and of Goal Seek the same in the panel, in the help and in the README', () => {
  const readme = readFileSync('README.md', 'utf8').replaceAll('`', '').replace(/\s+/g, ' ');
  const help = EXCEL_HELP.flat();
  expect(readme).toContain(WITHOUT_ADD_IN);
  expect(help).toContain(WITHOUT_ADD_IN);
  expect(readme).toContain(OWN_WHAT_IF.replace(/\.$/, ''));
  expect(help).toContain(OWN_WHAT_IF);
});

import katex from 'katex';
import { helpPage } from '../../src/call/helpPage';
import { families } from '../../src/call/search';
import type { Checks } from '../../src/core/checks';
import { excelHtml, helpHtml, indexHtml, validationHtml } from '../../src/derive/help';
import { validationCsv } from '../../src/derive/validation';
import { helpEntries } from './entries';
import { guidePages } from './guide/pages';

/** As strict as it goes: what is not understood stops the build. */
const typeset = (tex: string): string =>
  katex.renderToString(`\\displaystyle ${tex}`, { strict: 'error', throwOnError: true });

/** From one page of help to another. */
const address = (id: string): string => helpPage(id).replace(/^help\//, '');

/** The pages of help by their addresses: one for each function and a list of all. */
export async function helpPages(checks: readonly Checks[]): Promise<ReadonlyMap<string, string>> {
  const entries = await helpEntries(checks);
  const tools = { typeset, address };
  const lines = entries.flatMap((entry) => entry.checks ?? []);
  return new Map([
    ['help/excel.html', excelHtml()],
    // What the inputs of a form are at first.
    ['help/examples.json', JSON.stringify(examplesOf(checks))],
    ['help/index.html', indexHtml(entries, families, tools)],
    ['help/validation.html', validationHtml(lines, tools)],
    ['help/validation.csv', validationCsv(lines)],
    ...(await guidePages()),
    ...entries.map((entry): [string, string] => [helpPage(entry.id), helpHtml(entry, tools)]),
  ]);
}

const examplesOf = (checks: readonly Checks[]) =>
  Object.fromEntries(checks.map(({ of, checks: [first] }) => [of, first.given]));

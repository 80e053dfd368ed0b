import { NAMESPACE } from '../../src/call/namespace';
import { worksheetFunctions } from '../../src/call/functions';
import type { WorksheetFunction } from '../../src/call/worksheetFunction';
import { helpPage } from '../../src/excel/helpPage';
import { argumentText, signature } from '../../src/panel/argumentText';

/** The pages that Excel's help opens in a browser: one for each function and a list of all, by address. */
export const helpPages = (): ReadonlyMap<string, string> =>
  new Map([
    ['help/index.html', page('Functions', '', listOf(worksheetFunctions))],
    ...worksheetFunctions.map((fn): [string, string] => [
      helpPage(fn.id),
      page(`${NAMESPACE}.${fn.id}`, '<p><a href="index.html">All functions</a></p>', helpOf(fn)),
    ]),
  ]);

const listOf = (functions: readonly WorksheetFunction[]): string =>
  [...new Set(functions.map(({ family }) => family))]
    .map((family) => {
      const entries = functions
        .filter((fn) => fn.family === family)
        .map(({ id, summary }) => {
          const address = helpPage(id).replace('help/', '');
          return `<dt><a href="${address}">${NAMESPACE}.${escape(id)}</a></dt><dd>${escape(summary)}</dd>`;
        });
      return `<h2>${escape(family)}</h2><dl>${entries.join('')}</dl>`;
    })
    .join('');

const helpOf = (fn: WorksheetFunction): string => {
  const entries = fn.parameters.map(
    (parameter) =>
      `<dt>${escape(parameter.name)}${parameter.optional ? ' <small>optional</small>' : ''}</dt>` +
      `<dd>${escape(argumentText(parameter))}</dd>`,
  );
  return `<p>${escape(fn.summary)}</p><pre>${escape(signature(fn))}</pre><h2>Arguments</h2><dl>${entries.join('')}</dl>`;
};

const page = (title: string, above: string, body: string): string => `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'self'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<link rel="stylesheet" href="help.css">
<title>${escape(title)} – Moldsheet</title>
</head>
<body><main>${above}<h1>${escape(title)}</h1>${body}</main></body>
</html>
`;

const escape = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
